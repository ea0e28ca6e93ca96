package wickbench.widgets;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Says above a table that it has no row; a native table lets nobody draw words into it. */
final class NoRows {
    private final Label words;

    NoRows(Composite parent, Theme theme) {
        words = theme.controls().text(parent, Type.BODY, "");
        words.setForeground(theme.color(theme.palette().quiet()));
        show("");
    }

    /** @param text empty when there are rows; told with each slice, so what stands there already is laid out no more */
    void say(String text) {
        if (!text.equals(words.getText())) {
            show(text);
        }
    }

    private void show(String text) {
        words.setText(text);
        words.setVisible(!text.isEmpty());
        ((GridData) words.getLayoutData()).exclude = text.isEmpty();
        words.requestLayout();
    }
}

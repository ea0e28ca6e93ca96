package wickbench.training.ui;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import wickbench.widgets.Meaning;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** A line that says why something was not done, and takes no room while nothing is wrong. */
final class SaidLine {
    private final Label label;
    private final Runnable grown;

    SaidLine(Composite room, Theme theme, Runnable grown) {
        this.grown = grown;
        label = theme.controls().text(room, Type.BODY, "");
        label.setForeground(theme.color(theme.tone(Meaning.ALARM).ink()));
        show("");
    }

    void say(String text) {
        if (!label.isDisposed()) {
            show(text);
            label.requestLayout();
            grown.run();
        }
    }

    void refuse(Exception failure) {
        say(String.valueOf(failure.getMessage()));
    }

    private void show(String text) {
        label.setText(text);
        label.setVisible(!text.isEmpty());
        ((GridData) label.getLayoutData()).exclude = text.isEmpty();
    }
}

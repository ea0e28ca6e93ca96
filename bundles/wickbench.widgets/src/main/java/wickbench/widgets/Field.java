package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

/**
 * A labelled field.
 *
 * @param <C> the control that is filled in
 */
public final class Field<C extends Control> {
    private final Theme theme;
    private final Label label;
    private final C control;
    private final Label beside;
    private final Label below;
    private boolean complained;

    /**
     * Ties the parts of a field together.
     *
     * @param beside fills the column of labels on the line of {@code below}
     */
    Field(Theme theme, Label label, C control, Label beside, Label below) {
        this.theme = theme;
        this.label = label;
        this.control = control;
        this.beside = beside;
        this.below = below;
        nameForReaders();
        // before any listener of the page, which may complain of the new text at once
        control.addListener(SWT.Modify, event -> mended());
    }

    public C control() {
        return control;
    }

    /** Says below the field what is wrong with it, until it is filled in anew. */
    public void complain(String text) {
        say(text, Meaning.ALARM);
        complained = true;
    }

    private void mended() {
        if (complained) {
            clear();
        }
    }

    /** Says below the field what to mind of it, although it can stand. */
    public void mind(String text) {
        say(text, Meaning.CAUTION);
    }

    /** Says below the field what is good to know, such as why it cannot be changed. */
    public void hint(String text) {
        say(text, Meaning.NEUTRAL);
    }

    /** Takes back what was said below the field. */
    public void clear() {
        say("", Meaning.NEUTRAL);
    }

    /** Returns what stands below the field. */
    public String said() {
        return below.getText();
    }

    private void say(String text, Meaning meaning) {
        complained = false;
        below.setText(text);
        below.setForeground(theme.color(theme.tone(meaning).ink()));
        show(beside, !text.isEmpty());
        show(below, !text.isEmpty());
        below.requestLayout();
    }

    private static void show(Label line, boolean visible) {
        line.setVisible(visible);
        ((GridData) line.getLayoutData()).exclude = !visible;
    }

    private void nameForReaders() {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = label.getText().replace("&", "");
            }

            @Override
            public void getDescription(AccessibleEvent event) {
                event.result = below.getText();
            }
        });
    }
}

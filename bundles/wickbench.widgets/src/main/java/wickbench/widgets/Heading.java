package wickbench.widgets;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The words at the top of a page: its name, what is done here in one line, and room for buttons at the right. */
public final class Heading {
    private final Label title;
    private final Label line;
    private final Composite actions;

    public Heading(Composite parent, Theme theme, String title, String line) {
        Controls controls = theme.controls();
        Composite row = Fit.wide(controls.box(parent, 2));
        Composite words = Fit.wide(controls.box(row, 1));
        this.title = controls.label(words, Type.TITLE, title);
        this.line = Fit.wide(controls.text(words, Type.BODY, line));
        this.line.setForeground(theme.color(theme.palette().quiet()));
        // the words give way, for a button that is cut off cannot be pressed
        this.actions = controls.box(row, 0);
    }

    public void title(String words) {
        title.setText(words);
        title.getParent().layout();
    }

    public void line(String words) {
        line.setText(words);
        line.requestLayout();
    }

    /** Returns where the page's buttons go, from left to right. */
    public Composite actions() {
        return actions;
    }
}

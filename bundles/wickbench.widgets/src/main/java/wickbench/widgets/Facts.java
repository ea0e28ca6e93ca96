package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** What is known of a thing: names at the left, values at the right. */
public final class Facts {
    private final Theme theme;
    private final Composite grid;

    public Facts(Composite parent, Theme theme) {
        this.theme = theme;
        this.grid = Fit.wide(theme.controls().box(parent, 2));
        ((GridLayout) grid.getLayout()).verticalSpacing = theme.px(3);
        ((GridLayout) grid.getLayout()).horizontalSpacing = theme.metrics().grid(2);
    }

    public Facts add(String name, String value) {
        return add(name, Type.BODY, value);
    }

    /** Adds a value in a type of its own, such as digits that line up. */
    public Facts add(String name, Type type, String value) {
        Label label = theme.controls().label(grid, Type.BODY, name);
        label.setForeground(theme.color(theme.palette().quiet()));
        label.setLayoutData(new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false));
        theme.controls().text(grid, type, value);
        return this;
    }
}

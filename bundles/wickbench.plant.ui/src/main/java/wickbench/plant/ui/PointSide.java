package wickbench.plant.ui;

import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import wickbench.widgets.Fit;
import wickbench.widgets.Side;
import wickbench.widgets.Theme;

/** Beside the floor picture: the table of points, or the form of one in its place, so that the picture stays in sight. */
final class PointSide {
    private final Composite table;
    private final Composite place;
    private final Side side;

    PointSide(Composite parent, Theme theme, Composite table) {
        this.table = Fit.grow(table);
        place = Fit.grow(theme.controls().box(parent, 1));
        side = new Side(place, theme);
        Fit.grow(side.control());
        form(false);
    }

    Side side() {
        return side;
    }

    /** Shows the form, or the table again. */
    void form(boolean shown) {
        show(place, shown);
        show(table, !shown);
        place.getParent().layout(true, true);
        side.measure();
    }

    private static void show(Composite some, boolean visible) {
        some.setVisible(visible);
        ((GridData) some.getLayoutData()).exclude = !visible;
    }
}

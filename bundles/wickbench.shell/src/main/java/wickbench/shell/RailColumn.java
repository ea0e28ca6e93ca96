package wickbench.shell;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;
import wickbench.widgets.Theme;

/** Places one below the other: roomy where there is room, closer together in a low window; what is lower still scrolls. */
final class RailColumn extends Layout {
    private static final int GAP = 4;
    private final Theme theme;

    RailColumn(Theme theme) {
        this.theme = theme;
    }

    /** Returns the least room that they can do with. */
    @Override
    protected Point computeSize(Composite column, int wide, int high, boolean flush) {
        int places = column.getChildren().length;
        return new Point(
                wide == SWT.DEFAULT ? 0 : wide,
                high == SWT.DEFAULT ? places * theme.px(RailItem.LOW) + 2 * beside() : high);
    }

    @Override
    protected void layout(Composite column, boolean flush) {
        Rectangle area = column.getClientArea();
        List<Control> places = List.of(column.getChildren());
        if (places.isEmpty()) {
            return;
        }
        int roomy = theme.px(RailItem.HEIGHT + GAP);
        int step = Math.max(theme.px(RailItem.LOW), Math.min(roomy, (area.height - 2 * beside()) / places.size()));
        // what is lost of the room is lost of the gap first
        int height = Math.min(step, theme.px(RailItem.HEIGHT));
        for (int i = 0; i < places.size(); i++) {
            places.get(i).setBounds(area.x + side(), area.y + beside() + i * step, area.width - 2 * side(), height);
        }
    }

    private int side() {
        return theme.metrics().grid(1);
    }

    private int beside() {
        return theme.metrics().grid(1.5);
    }
}

package wickbench.widgets;

import java.util.List;

/**
 * Where the parts of a drawn strip lie. Liquid goes into the port below and runs up, so the control line is the topmost.
 *
 * @param port empty where there is no room for it
 * @param lines how many
 */
record StripPlan(StripSize size, Box housing, Box window, Box port, int lines) {
    private static final double ROW = 56;
    private static final double LINE = 7;

    static StripPlan of(StripSize size, int lines) {
        return switch (size) {
            case LARGE -> large(lines);
            case MIDDLE -> middle(lines);
            case SMALL -> small(lines);
        };
    }

    private static StripPlan large(int lines) {
        Box housing = new Box(64, 4, 104, size(StripSize.LARGE) - 9);
        return new StripPlan(
                StripSize.LARGE,
                housing,
                new Box(housing.left() + 30, 24, 44, 3 * ROW + 8),
                new Box(housing.left() + 28, housing.bottom() - 84, 48, 64),
                lines);
    }

    private static StripPlan middle(int lines) {
        Box housing = new Box(64, 0, 104, size(StripSize.MIDDLE) - 1);
        return new StripPlan(
                StripSize.MIDDLE,
                housing,
                new Box(housing.left() + 30, 5, 44, 3 * (ROW - 4)),
                new Box(housing.left(), housing.bottom(), 0, 0),
                lines);
    }

    private static StripPlan small(int lines) {
        Box housing = new Box(10, 1, 36, size(StripSize.SMALL) - 3);
        return new StripPlan(
                StripSize.SMALL,
                housing,
                new Box(housing.left() + 9, 8, 18, 56),
                new Box(housing.left() + 10, housing.bottom() - 30, 16, 22),
                lines);
    }

    /** The row of a line, as wide as the drawing. */
    Box row(int index) {
        double height = window.height() / Math.max(3, lines);
        double free = window.height() - height * lines;
        double gap = lines > 1 ? free / (lines - 1) : 0;
        return new Box(0, window.top() + index * (height + gap), size.width() - 1, height);
    }

    /** The line itself, within the window. */
    Box line(int index) {
        Box row = row(index);
        double thick = size.inWords() ? LINE : 4;
        return new Box(window.left() + 1, row.top() + (row.height() - thick) / 2, window.width() - 1, thick);
    }

    /** The signs between port and window that say which way the liquid runs. */
    List<Box> flow() {
        if (size != StripSize.LARGE) {
            return List.of();
        }
        double middle = housing.left() + housing.width() / 2;
        double top = window.bottom() + (port.top() - window.bottom()) / 2;
        return List.of(new Box(middle - 5, top - 8, 10, 5), new Box(middle - 5, top + 1, 10, 5));
    }

    private static double size(StripSize size) {
        return size.height();
    }
}

package wickbench.ledger.ui.trend;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import wickbench.widgets.Meaning;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/**
 * Points by weeks: in each field how many of the strips had the event, such as 2/5, shaded the more the more had it.
 *
 * <p>Arrows go from field to field, Enter or a click shows the strips behind one. The newest weeks are shown, as many as there is room
 * for.
 */
final class HeatMap extends Canvas {
    private static final int NAME = 170;
    private static final int CELL = 44;
    private static final int HEIGHT = 24;
    private static final double DEEPEST = 0.3;

    private final Theme theme;
    private final HeatGrid grid;
    private final BiConsumer<String, LocalDate> chosen;
    private int row;
    private int column = -1;

    HeatMap(Composite parent, Theme theme, HeatGrid grid, BiConsumer<String, LocalDate> chosen) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        this.grid = grid;
        this.chosen = chosen;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        addListener(SWT.MouseDown, this::press);
        addListener(SWT.KeyDown, this::key);
        addListener(SWT.Traverse, event -> event.doit = leaves(event.detail));
        addListener(SWT.FocusIn, event -> take());
        addListener(SWT.FocusOut, event -> redraw());
        Names.give(this, this::says);
    }

    private static boolean leaves(int detail) {
        return detail == SWT.TRAVERSE_TAB_NEXT
                || detail == SWT.TRAVERSE_TAB_PREVIOUS
                || detail == SWT.TRAVERSE_ESCAPE
                || detail == SWT.TRAVERSE_MNEMONIC;
    }

    /** Returns what a screen reader hears of the field in hand. */
    String says() {
        return column < 0 || grid.empty()
                ? TrendWords.get("heat.name")
                : TrendWords.get(
                        "heat.cell",
                        grid.places().get(row),
                        shown().get(column),
                        words(row, column).orElse(TrendWords.get("heat.nothing")));
    }

    private Optional<String> words(int at, int week) {
        return grid.at(grid.places().get(at), shown().get(week)).map(HeatGrid.Count::words);
    }

    /** The newest weeks that fit. */
    private List<LocalDate> shown() {
        int room = Math.max(1, (getClientArea().width - theme.px(NAME)) / theme.px(CELL));
        List<LocalDate> all = grid.weeks();
        return all.subList(Math.max(0, all.size() - room), all.size());
    }

    private void take() {
        if (column < 0 && !grid.empty()) {
            column = shown().size() - 1;
        }
        redraw();
    }

    private void key(Event event) {
        if (grid.empty()) {
            return;
        }
        switch (event.keyCode) {
            case SWT.ARROW_UP -> row = Math.max(0, row - 1);
            case SWT.ARROW_DOWN -> row = Math.min(grid.places().size() - 1, row + 1);
            case SWT.ARROW_LEFT -> column = Math.max(0, column - 1);
            case SWT.ARROW_RIGHT -> column = Math.min(shown().size() - 1, column + 1);
            case SWT.CR, SWT.KEYPAD_CR -> choose();
            default -> {}
        }
        getAccessible().sendEvent(org.eclipse.swt.accessibility.ACC.EVENT_NAME_CHANGED, null);
        redraw();
    }

    private void press(Event event) {
        setFocus();
        int at = event.y / theme.px(HEIGHT) - 1;
        int week = (event.x - theme.px(NAME)) / theme.px(CELL);
        boolean inside =
                event.x >= theme.px(NAME) && at >= 0 && at < grid.places().size() && week < shown().size();
        if (inside) {
            row = at;
            column = week;
            redraw();
            choose();
        }
    }

    private void choose() {
        chosen.accept(grid.places().get(row), shown().get(column));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(
                widthHint == SWT.DEFAULT ? theme.px(NAME + 6 * CELL) : widthHint,
                theme.px(HEIGHT) * (grid.places().size() + 1));
    }

    private void paint(GC gc) {
        gc.setFont(theme.font(Type.SMALL));
        List<LocalDate> weeks = shown();
        gc.setForeground(theme.color(theme.palette().quiet()));
        for (int week = 0; week < weeks.size(); week++) {
            middle(gc, grid.week(weeks.get(week)), cell(-1, week));
        }
        for (int at = 0; at < grid.places().size(); at++) {
            gc.setForeground(theme.color(theme.palette().ink()));
            Rectangle first = cell(at, 0);
            gc.setClipping(0, first.y, theme.px(NAME) - theme.px(6), first.height);
            gc.drawText(grid.places().get(at), 0, first.y + theme.px(4), true);
            gc.setClipping((Rectangle) null);
            for (int week = 0; week < weeks.size(); week++) {
                paint(gc, at, weeks.get(week), cell(at, week));
            }
        }
        if (isFocusControl() && column >= 0) {
            gc.setForeground(theme.color(theme.palette().accent()));
            gc.setLineWidth(theme.px(2));
            Rectangle here = cell(row, column);
            gc.drawRectangle(here.x, here.y, here.width - 1, here.height - 1);
        }
    }

    private void paint(GC gc, int at, LocalDate week, Rectangle cell) {
        Optional<HeatGrid.Count> count = grid.at(grid.places().get(at), week);
        if (count.isEmpty()) {
            return;
        }
        RGB wash = theme.tone(Meaning.ALARM).wash();
        RGB ink = theme.tone(Meaning.ALARM).ink();
        boolean none = count.get().events() == 0;
        double share = count.get().share();
        gc.setBackground(theme.color(none ? theme.palette().surface() : mixed(wash, ink, DEEPEST * share)));
        gc.fillRectangle(cell.x + 1, cell.y + 1, cell.width - 2, cell.height - 2);
        gc.setForeground(
                theme.color(none ? theme.palette().quiet() : theme.palette().ink()));
        middle(gc, count.get().words(), cell);
    }

    private static RGB mixed(RGB one, RGB other, double share) {
        return new RGB(
                (int) Math.round(one.red + (other.red - one.red) * share),
                (int) Math.round(one.green + (other.green - one.green) * share),
                (int) Math.round(one.blue + (other.blue - one.blue) * share));
    }

    private static void middle(GC gc, String words, Rectangle cell) {
        Point size = gc.textExtent(words);
        gc.drawText(words, cell.x + (cell.width - size.x) / 2, cell.y + (cell.height - size.y) / 2, true);
    }

    private Rectangle cell(int at, int week) {
        return new Rectangle(
                theme.px(NAME) + week * theme.px(CELL), (at + 1) * theme.px(HEIGHT), theme.px(CELL), theme.px(HEIGHT));
    }
}

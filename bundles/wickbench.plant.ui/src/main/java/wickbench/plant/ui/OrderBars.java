package wickbench.plant.ui;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.terms.PlantTerms;
import wickbench.widgets.Meaning;
import wickbench.widgets.MeaningBar;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The changes of a day in a row of bars, as entered and as found: clean and tests, each as long as it takes. */
final class OrderBars extends Canvas {
    private static final int ROW = 46;
    private static final int LEFT = 110;
    private static final int BAR = 22;

    private final Theme theme;
    private List<Day> days = List.of();

    /** An order with its changes; those that must not be made have no length. */
    record Day(String name, List<Changeover> changes) {
        int minutes() {
            return changes.stream().mapToInt(Changeover::minutes).sum();
        }

        boolean allowed() {
            return changes.stream().allMatch(Changeover::allowed);
        }
    }

    OrderBars(Composite parent, Theme theme) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.theme = theme;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.give(this, this::inWords);
    }

    void show(List<Day> next) {
        days = List.copyOf(next);
        requestLayout();
        redraw();
    }

    /** Returns both days as they are read aloud. */
    String inWords() {
        return days.stream()
                .map(OrderBars::words)
                .reduce("", (all, day) -> all + day + " ")
                .strip();
    }

    private static String words(Day day) {
        return day.allowed()
                ? PlantUiWords.get("bars.day", day.name(), day.minutes())
                : PlantUiWords.get("bars.forbidden", day.name());
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        return new Point(theme.px(480), theme.px(ROW * Math.max(1, days.size()) + 30));
    }

    private void paint(GC gc) {
        gc.setAntialias(SWT.ON);
        int most = Math.max(1, days.stream().mapToInt(Day::minutes).max().orElse(1));
        gc.setFont(theme.font(Type.BODY));
        int words =
                days.stream().mapToInt(day -> gc.textExtent(end(day)).x).max().orElse(0);
        double pixels = (double) Math.max(0, getClientArea().width - theme.px(LEFT + 4 * 6) - gaps() - words) / most;
        for (int i = 0; i < days.size(); i++) {
            day(gc, days.get(i), theme.px(ROW * i), pixels);
        }
        if (!days.isEmpty()) {
            legend(gc, theme.px(ROW * days.size()));
        }
    }

    private void day(GC gc, Day day, int y, double pixels) {
        gc.setFont(theme.font(Type.STRONG));
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.drawText(day.name(), theme.px(4), y + theme.px(10), true);
        int x = theme.px(LEFT);
        for (Changeover change : day.changes()) {
            int tests = (int) Math.round(change.testMinutes() * pixels);
            int whole = (int) Math.round(change.minutes() * pixels);
            fill(gc, change.allowed() ? Meaning.NEUTRAL : Meaning.ALARM, x, y, whole - tests);
            fill(gc, Meaning.NOTICE, x + whole - tests, y, tests);
            x += whole + theme.px(3);
        }
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.setFont(theme.font(Type.BODY));
        gc.drawText(end(day), x + theme.px(6), y + theme.px(10), true);
    }

    private static String end(Day day) {
        return day.allowed() ? PlantUiWords.get("bars.minutes", day.minutes()) : PlantTerms.said("order.entered-not");
    }

    /** The room between the changes of a day, in pixels. */
    private int gaps() {
        return days.stream()
                .mapToInt(day -> theme.px(3) * day.changes().size())
                .max()
                .orElse(0);
    }

    private void fill(GC gc, Meaning meaning, int x, int y, int width) {
        if (width > 0) {
            MeaningBar.paint(gc, theme, meaning, new Rectangle(x, y + theme.px(8), width, theme.px(BAR)));
        }
    }

    private void legend(GC gc, int y) {
        gc.setFont(theme.font(Type.SMALL));
        int x = theme.px(LEFT);
        for (Meaning meaning : List.of(Meaning.NEUTRAL, Meaning.NOTICE)) {
            MeaningBar.paint(gc, theme, meaning, new Rectangle(x, y + theme.px(6), theme.px(12), theme.px(12)));
            gc.setForeground(theme.color(theme.palette().quiet()));
            String words = PlantUiWords.get(meaning == Meaning.NEUTRAL ? "bars.clean" : "bars.tests");
            gc.drawText(words, x + theme.px(18), y + theme.px(3), true);
            x += theme.px(40) + gc.textExtent(words).x;
        }
    }
}

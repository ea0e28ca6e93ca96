package wickbench.bench.ui;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.bench.run.Moment;
import wickbench.bench.run.RunPlanning.Planned;
import wickbench.reading.plan.PlannedStrip;
import wickbench.widgets.Meaning;
import wickbench.widgets.MinSec;
import wickbench.widgets.Names;
import wickbench.widgets.Theme;
import wickbench.widgets.Type;

/** The plan drawn: a row a strip, with hands-on work, developing, reading window and the look in it; and where now is. */
final class RunGantt extends Canvas {
    private static final int ROW = 26;
    private static final int HEAD = 34;
    private static final int LEFT = 120;
    private static final int LEGEND = 30;

    private final Theme theme;
    private Optional<Planned> planned = Optional.empty();
    private Optional<Moment> now = Optional.empty();

    RunGantt(Composite parent, Theme theme) {
        super(parent, SWT.DOUBLE_BUFFERED);
        this.theme = theme;
        setBackground(parent.getBackground());
        addListener(SWT.Paint, event -> paint(event.gc));
        // Tab and Enter go where they always go
        addListener(SWT.Traverse, event -> event.doit = true);
        Names.give(this, this::inWords);
    }

    void show(Optional<Planned> plan, Moment at) {
        boolean other = !plan.equals(planned);
        planned = plan;
        now = Optional.of(at);
        if (other) {
            requestLayout();
        }
        redraw();
    }

    /** Returns the plan as it is read aloud. */
    String inWords() {
        return planned.map(plan -> rows(plan).stream()
                        .map(strip -> FlowWords.get(
                                "gantt.row",
                                strip.strip().name(),
                                MinSec.of(strip.started()),
                                MinSec.of(strip.readStart())))
                        .reduce("", (all, row) -> all + row + " "))
                .orElse(FlowWords.get("plan.none"));
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        int rows = planned.map(plan -> plan.plan().strips().size()).orElse(0);
        return new Point(theme.px(480), theme.px(HEAD + LEGEND + ROW * Math.max(1, rows)));
    }

    private static List<PlannedStrip> rows(Planned plan) {
        return plan.plan().strips().stream()
                .sorted(Comparator.comparing(PlannedStrip::started))
                .toList();
    }

    private void paint(GC gc) {
        if (planned.isEmpty()) {
            return;
        }
        gc.setAntialias(SWT.ON);
        List<PlannedStrip> rows = rows(planned.get());
        Scale scale = Scale.of(rows, getClientArea().width - theme.px(LEFT + 16), theme.px(LEFT));
        axis(gc, scale, rows.size());
        for (int i = 0; i < rows.size(); i++) {
            row(gc, scale, rows.get(i), theme.px(HEAD + ROW * i));
        }
        nowLine(gc, scale, rows.size());
        legend(gc, theme.px(HEAD + ROW * rows.size() + 8));
    }

    /** Turns seconds of the plan into pixels. */
    private record Scale(Duration from, Duration to, int width, int left) {
        static Scale of(List<PlannedStrip> rows, int width, int left) {
            Duration from = rows.stream()
                    .map(PlannedStrip::dipStart)
                    .min(Comparator.naturalOrder())
                    .filter(Duration::isNegative)
                    .orElse(Duration.ZERO);
            Duration to = rows.stream()
                    .map(PlannedStrip::closes)
                    .max(Comparator.naturalOrder())
                    .orElse(Duration.ofMinutes(1));
            return new Scale(from, to, Math.max(1, width), left);
        }

        int x(Duration at) {
            double part = (double) at.minus(from).toMillis()
                    / Math.max(1, to.minus(from).toMillis());
            return left + (int) Math.round(part * width);
        }
    }

    private void axis(GC gc, Scale scale, int rows) {
        gc.setFont(theme.font(Type.SMALL));
        long minutes = Math.max(1, scale.to().minus(scale.from()).toMinutes() / 8);
        for (long minute = Math.max(0, scale.from().toMinutes());
                minute <= scale.to().toMinutes();
                minute += minutes) {
            int x = scale.x(Duration.ofMinutes(minute));
            gc.setForeground(theme.color(theme.palette().edge()));
            gc.drawLine(x, theme.px(HEAD - 8), x, theme.px(HEAD + ROW * rows));
            gc.setForeground(theme.color(theme.palette().quiet()));
            String words = FlowWords.get("gantt.minute", minute);
            gc.drawText(words, x - gc.textExtent(words).x / 2, theme.px(4), true);
        }
    }

    private void row(GC gc, Scale scale, PlannedStrip strip, int y) {
        int height = theme.px(ROW - 10);
        int top = y + theme.px(5);
        gc.setFont(theme.font(Type.STRONG));
        gc.setForeground(theme.color(theme.palette().ink()));
        String name = FlowWords.get("gantt.strip", strip.strip().name());
        gc.drawText(name, theme.px(8), top + (height - gc.textExtent(name).y) / 2, true);
        if (!strip.running()) {
            block(gc, scale, strip.dipStart(), strip.started(), top, height);
        }
        gc.setBackground(theme.color(theme.tone(Meaning.NEUTRAL).ink()));
        int middle = top + height / 2;
        int from = scale.x(strip.started());
        gc.fillRectangle(from, middle - theme.px(1), Math.max(1, scale.x(strip.opens()) - from), theme.px(3));
        Rectangle window = span(scale, strip.opens(), strip.closes(), top, height);
        gc.setBackground(theme.color(theme.tone(Meaning.CALM).wash()));
        gc.fillRectangle(window);
        gc.setForeground(theme.color(theme.tone(Meaning.CALM).ink()));
        gc.drawRectangle(window.x, window.y, window.width, window.height - 1);
        gc.setBackground(theme.color(theme.tone(Meaning.CALM).ink()));
        gc.fillRectangle(span(scale, strip.readStart(), strip.readEnd(), top, height));
    }

    private void block(GC gc, Scale scale, Duration from, Duration to, int top, int height) {
        gc.setBackground(theme.color(theme.palette().accent()));
        gc.fillRectangle(span(scale, from, to, top, height));
    }

    private static Rectangle span(Scale scale, Duration from, Duration to, int top, int height) {
        int x = scale.x(from);
        return new Rectangle(x, top, Math.max(2, scale.x(to) - x), height);
    }

    private void nowLine(GC gc, Scale scale, int rows) {
        Duration at = now.orElseThrow().after(planned.orElseThrow().at()).span();
        if (at.compareTo(scale.to()) <= 0 && !at.isNegative()) {
            gc.setForeground(theme.color(theme.tone(Meaning.ALARM).ink()));
            gc.setLineWidth(theme.px(2));
            gc.drawLine(scale.x(at), theme.px(HEAD - 8), scale.x(at), theme.px(HEAD + ROW * rows));
            gc.setLineWidth(1);
        }
    }

    private void legend(GC gc, int y) {
        gc.setFont(theme.font(Type.SMALL));
        gc.setForeground(theme.color(theme.palette().quiet()));
        int side = theme.px(12);
        int x = theme.px(LEFT);
        x = key(gc, x, y, "gantt.hands", theme.palette().accent(), side);
        x = key(gc, x, y, "gantt.develops", theme.tone(Meaning.NEUTRAL).ink(), theme.px(3));
        x = key(gc, x, y, "gantt.window", theme.tone(Meaning.CALM).wash(), side);
        key(gc, x, y, "gantt.look", theme.tone(Meaning.CALM).ink(), side);
    }

    private int key(GC gc, int x, int y, String word, org.eclipse.swt.graphics.RGB color, int height) {
        int side = theme.px(12);
        gc.setBackground(theme.color(color));
        gc.fillRectangle(x, y + (side - height) / 2, theme.px(18), height);
        if (height == side) {
            gc.drawRectangle(x, y, theme.px(18) - 1, side - 1);
        }
        String words = FlowWords.get(word);
        gc.drawText(words, x + theme.px(24), y + (side - gc.textExtent(words).y) / 2, true);
        return x + theme.px(24 + 20) + gc.textExtent(words).x;
    }
}

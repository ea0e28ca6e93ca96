package wickbench.bench.ui;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import wickbench.bench.run.Moment;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunState;
import wickbench.bench.run.StripState;
import wickbench.widgets.Meaning;
import wickbench.widgets.MinSec;
import wickbench.widgets.Names;
import wickbench.widgets.Pen;
import wickbench.widgets.Theme;
import wickbench.widgets.Tone;
import wickbench.widgets.Type;

/**
 * The band across the page while a window is open or was missed: which strip, how long, and how to silence it.
 *
 * <p>It flashes until somebody has answered it, once a second: three times a second could harm (WCAG 2.2, 2.3.1).
 */
final class AlarmBand extends Canvas {
    private static final int HEIGHT = 64;
    private static final int SIDE = 26;

    private final Theme theme;
    private final GridData place = new GridData(SWT.FILL, SWT.FILL, true, false);
    private String words = "";
    private String hint = "";
    private Meaning meaning = Meaning.ALARM;
    private boolean calm = true;
    private boolean lit;

    AlarmBand(Composite parent, Theme theme) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.theme = theme;
        place.heightHint = theme.px(HEIGHT);
        place.exclude = true;
        setLayoutData(place);
        setVisible(false);
        addListener(SWT.Paint, event -> paint(event.gc));
        Names.role(Names.give(this, () -> words), ACC.ROLE_ALERT);
    }

    /** Flashes from now on. */
    void ring() {
        calm = false;
    }

    /** Somebody has heard. */
    void answered() {
        calm = true;
        redraw();
    }

    boolean calm() {
        return calm;
    }

    String words() {
        return getVisible() ? words : "";
    }

    /** Shows how things stand; goes away when nothing is to be read. */
    void show(RunState run, Moment now) {
        List<StripState> open = run.in(Phase.OPEN, now);
        List<StripState> missed = run.in(Phase.MISSED, now);
        meaning = open.isEmpty() ? Meaning.CAUTION : Meaning.ALARM;
        words = open.isEmpty() ? missed(missed) : open(open, now);
        hint = FlowWords.get(calm ? "band.number" : "band.silence");
        visible(!words.isEmpty());
        // the second of the steady clock, so that it flashes evenly
        lit = now.since().toMillis() / 500 % 2 == 0;
        redraw();
    }

    void hide() {
        words = "";
        visible(false);
    }

    private static String open(List<StripState> open, Moment now) {
        StripState first = open.get(0);
        String left = MinSec.of(first.left(now));
        return open.size() == 1
                ? FlowWords.get("band.open", first.number(), left)
                : FlowWords.get("band.open-more", first.number(), left, numbers(open.subList(1, open.size())));
    }

    private static String missed(List<StripState> missed) {
        return missed.isEmpty() ? "" : FlowWords.get("band.missed", numbers(missed));
    }

    private static String numbers(List<StripState> strips) {
        return strips.stream().map(strip -> Integer.toString(strip.number())).collect(Collectors.joining(", "));
    }

    private void visible(boolean is) {
        if (is == place.exclude) {
            place.exclude = !is;
            setVisible(is);
            getParent().layout(true, true);
        }
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        Tone tone = theme.tone(meaning);
        boolean full = calm || lit;
        gc.setAntialias(SWT.ON);
        gc.setBackground(theme.color(full ? tone.wash() : theme.palette().surface()));
        gc.fillRectangle(area);
        gc.setBackground(theme.color(tone.ink()));
        gc.fillRectangle(0, 0, theme.px(10), area.height);
        gc.fillRectangle(0, area.height - theme.px(3), area.width, theme.px(3));
        gc.setForeground(theme.color(tone.ink()));
        gc.setFont(theme.font(Type.LARGE));
        Point size = gc.textExtent(words);
        int x = theme.px(26);
        Rectangle box = new Rectangle(x, (area.height - theme.px(SIDE)) / 2, theme.px(SIDE), theme.px(SIDE));
        Pen.draw(gc, meaning == Meaning.ALARM ? AlarmBand::triangle : AlarmBand::cross, box, theme.color(tone.ink()));
        gc.setForeground(theme.color(tone.ink()));
        gc.setFont(theme.font(Type.LARGE));
        gc.drawText(words, x + theme.px(SIDE + 14), (area.height - size.y) / 2, true);
        hint(gc, area, x + theme.px(SIDE + 14) + size.x);
    }

    private void hint(GC gc, Rectangle area, int from) {
        gc.setFont(theme.font(Type.BODY));
        Point small = gc.textExtent(hint);
        int right = area.width - small.x - theme.px(16);
        if (right > from + theme.px(16)) {
            gc.drawText(hint, right, (area.height - small.y) / 2, true);
        }
    }

    private static void triangle(Pen pen) {
        pen.fill(12, 2, 23, 21, 1, 21);
    }

    private static void cross(Pen pen) {
        pen.line(4, 4, 20, 20).line(20, 4, 4, 20);
    }
}

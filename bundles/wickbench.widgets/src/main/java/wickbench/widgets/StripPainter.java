package wickbench.widgets;

import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;

/** Paints a strip; lengths are design pixels. The strip itself is the same in light and dark, as the real one is. */
final class StripPainter {
    // the same by day and by night: a strip is white
    static final RGB HOUSING = new RGB(0xFA, 0xFB, 0xFC);
    static final RGB RIM = new RGB(0x82, 0x8E, 0x9A);
    static final RGB MEMBRANE = new RGB(0xFF, 0xFF, 0xFF);
    private static final RGB WELL = new RGB(0xDF, 0xE5, 0xEA);
    static final RGB DYE = new RGB(0x8E, 0x1F, 0x4F);
    static final RGB GHOST = new RGB(0x6B, 0x77, 0x82);

    private final GC gc;
    private final Theme theme;
    private final StripDrawing strip;
    private final StripPlan plan;

    StripPainter(GC gc, Theme theme, StripDrawing strip) {
        this.gc = gc;
        this.theme = theme;
        this.strip = strip;
        this.plan = StripPlan.of(strip.size(), strip.format().lines().size());
    }

    static Rectangle row(StripDrawing strip, Theme theme, LineRole role) {
        StripPlan plan = StripPlan.of(strip.size(), strip.format().lines().size());
        return plan.row(strip.format().lines().indexOf(role)).on(theme.metrics());
    }

    void paint() {
        gc.setAntialias(SWT.ON);
        body();
        for (LineRole role : strip.format().lines()) {
            int at = strip.format().lines().indexOf(role);
            if (strip.size().inWords()) {
                words(role, plan.row(at));
            }
            line(role, plan.line(at));
        }
    }

    private void body() {
        panel(plan.housing(), HOUSING, RIM, 14);
        panel(plan.window(), MEMBRANE, RIM, 6);
        if (plan.port().height() > 0) {
            panel(plan.port(), WELL, RIM, plan.port().width());
        }
        plan.flow().forEach(this::chevron);
    }

    /** Points the way the liquid runs. */
    private void chevron(Box box) {
        Rectangle at = box.on(theme.metrics());
        gc.setForeground(theme.color(RIM));
        gc.setLineWidth(theme.px(2));
        gc.drawPolyline(
                new int[] {at.x, at.y + at.height, at.x + at.width / 2, at.y, at.x + at.width, at.y + at.height});
        gc.setLineWidth(1);
    }

    private void panel(Box box, RGB fill, RGB rim, double corner) {
        Rectangle at = box.on(theme.metrics());
        int round = theme.px(corner);
        gc.setBackground(theme.color(fill));
        gc.fillRoundRectangle(at.x, at.y, at.width, at.height, round, round);
        gc.setForeground(theme.color(rim));
        gc.drawRoundRectangle(at.x, at.y, at.width, at.height, round, round);
    }

    private void line(LineRole role, Box box) {
        Rectangle at = box.on(theme.metrics());
        Optional<Seen> answer = strip.answer(role);
        if (answer.isEmpty()) {
            unanswered(at);
        } else {
            switch (answer.get()) {
                case SEEN -> band(at, 255);
                case FAINT -> band(at, 90);
                case NOT_SEEN -> ghost(at);
                case DAMAGED -> damaged(at);
            }
        }
    }

    private void band(Rectangle at, int alpha) {
        gc.setAlpha(alpha);
        gc.setBackground(theme.color(DYE));
        gc.fillRectangle(at);
        gc.setAlpha(255);
    }

    /** Where a line would be: a thin dotted trace. */
    private void ghost(Rectangle at) {
        gc.setForeground(theme.color(GHOST));
        gc.setLineStyle(SWT.LINE_DOT);
        gc.drawLine(at.x, at.y + at.height / 2, at.x + at.width, at.y + at.height / 2);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    /** Three pieces out of line, smeared. */
    private void damaged(Rectangle at) {
        int third = at.width / 3;
        int shift = Math.max(1, at.height * 2 / 3);
        band(new Rectangle(at.x, at.y - shift, third, at.height), 200);
        band(new Rectangle(at.x + third, at.y + shift, third * 2 / 3, at.height), 120);
        band(new Rectangle(at.x + 2 * third, at.y, third, Math.max(2, at.height / 2)), 200);
    }

    /** Nothing known: an empty dashed frame, narrower than a line. */
    private void unanswered(Rectangle at) {
        int more = theme.px(strip.size().inWords() ? 4 : 2);
        gc.setForeground(theme.color(GHOST));
        gc.setLineDash(new int[] {theme.px(4), theme.px(3)});
        gc.drawRoundRectangle(at.x + more, at.y - more, at.width - 2 * more, at.height + 2 * more, more, more);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    private void words(LineRole role, Box rowBox) {
        Rectangle row = rowBox.on(theme.metrics());
        boolean focused = strip.editable() && strip.isFocusControl() && strip.line() == role;
        if (focused) {
            gc.setForeground(theme.color(theme.palette().accent()));
            gc.setLineWidth(theme.px(2));
            gc.drawRoundRectangle(row.x + 1, row.y + 1, row.width - 3, row.height - 3, theme.px(8), theme.px(8));
            gc.setLineWidth(1);
        }
        mark(role, row);
        leader(row);
        says(role, row, focused);
    }

    private void mark(LineRole role, Rectangle row) {
        gc.setFont(theme.font(Type.HEADING));
        gc.setForeground(theme.color(theme.palette().ink()));
        Point size = gc.textExtent(strip.mark(role));
        gc.drawText(strip.mark(role), theme.px(plan.housing().left() - 16) - size.x, middle(row, size.y), true);
    }

    private void leader(Rectangle row) {
        gc.setForeground(theme.color(theme.palette().edge()));
        int y = row.y + row.height / 2;
        gc.drawLine(
                theme.px(plan.housing().left() - 12), y, theme.px(plan.housing().left() - 2), y);
        gc.drawLine(
                theme.px(plan.housing().right() + 2), y, theme.px(plan.housing().right() + 12), y);
    }

    private void says(LineRole role, Rectangle row, boolean focused) {
        int x = theme.px(plan.housing().right() + 20);
        gc.setFont(theme.font(Type.STRONG));
        String above = strip.says(role);
        gc.setFont(theme.font(Type.SMALL));
        String below = focused ? WidgetWords.get("strip.keys") : WidgetWords.get("strip.line." + role.code());
        int small = gc.textExtent(below).y;
        gc.setFont(theme.font(Type.STRONG));
        int strong = gc.textExtent(above).y;
        int y = row.y + (row.height - small - strong) / 2;
        gc.setForeground(theme.color(inkOf(role)));
        gc.drawText(above, x, y, true);
        gc.setFont(theme.font(Type.SMALL));
        gc.setForeground(theme.color(theme.palette().quiet()));
        gc.drawText(below, x, y + strong, true);
    }

    /** What still has to be answered stands out. */
    private RGB inkOf(LineRole role) {
        boolean open = strip.answer(role).isEmpty();
        return open ? theme.tone(Meaning.CAUTION).ink() : theme.palette().ink();
    }

    private static int middle(Rectangle row, int height) {
        return row.y + (row.height - height) / 2;
    }
}

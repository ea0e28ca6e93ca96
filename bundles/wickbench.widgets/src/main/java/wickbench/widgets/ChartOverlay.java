package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import wickbench.api.chart.Series;

/** Draws over a chart what moves: the point in hand with its words, and the frame that is being drawn. */
record ChartOverlay(GC gc, Theme theme, Rectangle area) {
    private static final int RADIUS = 5;

    /** Marks a point and says it beside it. */
    void point(Series.Mark mark, double x, double y, String words) {
        gc.setAntialias(SWT.ON);
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.setLineWidth(theme.px(2));
        int px = (int) Math.round(x);
        int py = (int) Math.round(y);
        int radius = theme.px(RADIUS);
        if (mark == Series.Mark.BARS) {
            gc.setLineStyle(SWT.LINE_DOT);
            gc.drawLine(px, area.y, px, area.y + area.height);
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            gc.drawOval(px - radius, py - radius, 2 * radius, 2 * radius);
        }
        bubble(px, py, words);
    }

    private void bubble(int x, int y, String words) {
        gc.setFont(theme.font(Type.SMALL));
        int air = theme.metrics().grid(1);
        Point text = gc.textExtent(words);
        int width = text.x + 2 * air;
        int height = text.y + air;
        int left = x + 2 * air + width > area.x + area.width ? x - 2 * air - width : x + 2 * air;
        int top = Math.max(area.y, Math.min(area.y + area.height - height, y - height / 2));
        gc.setBackground(theme.color(theme.palette().raised()));
        gc.setForeground(theme.color(theme.palette().edge()));
        gc.setLineWidth(theme.px(1));
        gc.fillRoundRectangle(Math.max(0, left), top, width, height, air, air);
        gc.drawRoundRectangle(Math.max(0, left), top, width, height, air, air);
        gc.setForeground(theme.color(theme.palette().ink()));
        gc.drawText(words, Math.max(0, left) + air, top + air / 2, SWT.DRAW_TRANSPARENT | SWT.DRAW_DELIMITER);
    }

    /** Draws the frame that the pointer spans. */
    void frame(Rectangle frame) {
        gc.setForeground(theme.color(theme.palette().accent()));
        gc.setLineWidth(theme.px(1.5));
        gc.setLineStyle(SWT.LINE_DASH);
        gc.drawRectangle(frame);
        gc.setLineStyle(SWT.LINE_SOLID);
    }

    /** Shows that the keys go here. */
    void focus() {
        gc.setForeground(theme.color(theme.palette().accent()));
        gc.setLineWidth(theme.px(2));
        gc.drawRectangle(1, 1, area.width - 2, area.height - 2);
    }

    /** Says in the middle why there is no chart. */
    void words(String words) {
        gc.setFont(theme.font(Type.BODY));
        gc.setForeground(theme.color(theme.palette().quiet()));
        Point text = gc.textExtent(words);
        gc.drawText(
                words,
                Math.max(0, (area.width - text.x) / 2),
                Math.max(0, (area.height - text.y) / 2),
                SWT.DRAW_TRANSPARENT);
    }
}

package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** Draws the shape of a mark into a square, filled with the meaning's colour, outlined in its ink. */
final class ShapePainter {
    private final GC gc;
    private final Rectangle box;

    private ShapePainter(GC gc, Rectangle box) {
        this.gc = gc;
        this.box = box;
    }

    static void paint(GC gc, Theme theme, Shape shape, Meaning meaning, Rectangle box) {
        gc.setAntialias(SWT.ON);
        gc.setForeground(theme.color(theme.tone(meaning).ink()));
        gc.setBackground(theme.color(theme.tone(meaning).mark()));
        gc.setLineWidth(Math.max(1, Math.round(box.width / 8f)));
        new ShapePainter(gc, box).paint(shape);
        gc.setLineWidth(1);
    }

    private void paint(Shape shape) {
        switch (shape) {
            case RING -> ring();
            case DISC -> disc();
            case TRIANGLE -> polygon(0.5, 0.06, 0.98, 0.92, 0.02, 0.92);
            case DOUBLE_TRIANGLE -> {
                polygon(0.5, 0.0, 0.94, 0.5, 0.06, 0.5);
                polygon(0.5, 0.5, 0.94, 1.0, 0.06, 1.0);
            }
            case CROSS -> cross();
            case SQUARE -> polygon(0.1, 0.1, 0.9, 0.1, 0.9, 0.9, 0.1, 0.9);
            case DIAMOND -> polygon(0.5, 0.0, 1.0, 0.5, 0.5, 1.0, 0.0, 0.5);
            case BAR -> polygon(0.05, 0.38, 0.95, 0.38, 0.95, 0.62, 0.05, 0.62);
        }
    }

    private void ring() {
        gc.setLineWidth(Math.max(2, Math.round(box.width / 5f)));
        gc.drawOval(x(0.14), y(0.14), x(0.86) - x(0.14), y(0.86) - y(0.14));
    }

    private void disc() {
        gc.fillOval(x(0.08), y(0.08), x(0.92) - x(0.08), y(0.92) - y(0.08));
        gc.drawOval(x(0.08), y(0.08), x(0.92) - x(0.08), y(0.92) - y(0.08));
    }

    private void cross() {
        gc.setLineWidth(Math.max(2, Math.round(box.width / 5f)));
        gc.drawLine(x(0.14), y(0.14), x(0.86), y(0.86));
        gc.drawLine(x(0.86), y(0.14), x(0.14), y(0.86));
    }

    private void polygon(double... points) {
        int[] at = new int[points.length];
        for (int i = 0; i < points.length; i += 2) {
            at[i] = x(points[i]);
            at[i + 1] = y(points[i + 1]);
        }
        gc.fillPolygon(at);
        gc.drawPolygon(at);
    }

    private int x(double part) {
        return box.x + (int) Math.round(part * box.width);
    }

    private int y(double part) {
        return box.y + (int) Math.round(part * box.height);
    }
}

package wickbench.widgets;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.LineAttributes;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Rectangle;

/** Draws a {@link Glyph} in one colour; coordinates run from 0 to 24, right and down. */
public final class Pen {
    private static final float WIDTH = 1.75f;

    private final GC gc;
    private final float x;
    private final float y;
    private final float unit;

    private Pen(GC gc, Rectangle box) {
        this.gc = gc;
        this.x = box.x;
        this.y = box.y;
        this.unit = Math.min(box.width, box.height) / (float) Glyph.SIDE;
    }

    /** Draws a glyph into a box. */
    public static void draw(GC gc, Glyph glyph, Rectangle box, Color color) {
        gc.setAntialias(SWT.ON);
        gc.setForeground(color);
        gc.setBackground(color);
        Pen pen = new Pen(gc, box);
        gc.setLineAttributes(new LineAttributes(WIDTH * pen.unit, SWT.CAP_ROUND, SWT.JOIN_ROUND));
        glyph.draw(pen);
        gc.setLineAttributes(new LineAttributes(1));
    }

    /** Draws straight lines from point to point: {@code x, y, x, y, …}. */
    public Pen line(double... points) {
        Path path = path(points);
        gc.drawPath(path);
        path.dispose();
        return this;
    }

    /** Fills the area between points. */
    public Pen fill(double... points) {
        Path path = path(points);
        path.close();
        gc.fillPath(path);
        path.dispose();
        return this;
    }

    /** Draws a rectangle with rounded corners. */
    public Pen box(double left, double top, double width, double height, double corner) {
        gc.drawRoundRectangle(px(x, left), px(y, top), len(width), len(height), len(2 * corner), len(2 * corner));
        return this;
    }

    public Pen circle(double cx, double cy, double radius) {
        gc.drawOval(px(x, cx - radius), px(y, cy - radius), len(2 * radius), len(2 * radius));
        return this;
    }

    public Pen disc(double cx, double cy, double radius) {
        gc.fillOval(px(x, cx - radius), px(y, cy - radius), len(2 * radius), len(2 * radius));
        return this;
    }

    /** Draws an arc; degrees run counter-clockwise from three o'clock. */
    public Pen arc(double cx, double cy, double radius, int from, int degrees) {
        gc.drawArc(px(x, cx - radius), px(y, cy - radius), len(2 * radius), len(2 * radius), from, degrees);
        return this;
    }

    private Path path(double... points) {
        Path path = new Path(gc.getDevice());
        path.moveTo(x + (float) points[0] * unit, y + (float) points[1] * unit);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(x + (float) points[i] * unit, y + (float) points[i + 1] * unit);
        }
        return path;
    }

    private int px(float origin, double at) {
        return Math.round(origin + (float) at * unit);
    }

    private int len(double length) {
        return Math.round((float) length * unit);
    }
}

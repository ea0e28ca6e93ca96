package wickbench.report.pdf;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Paint;
import java.awt.Polygon;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.RoundRectangle2D;
import java.text.AttributedCharacterIterator;
import java.util.Map;

/**
 * A canvas that turns everything into three acts: draw a shape, fill a shape, write a text.
 *
 * <p>What is set on it (colour, transform, clip …) is kept by a canvas of the platform.
 */
abstract class StateCanvas extends NoPictures {
    private final Graphics2D state;

    StateCanvas(Graphics2D state) {
        this.state = state;
    }

    /** Returns another canvas onto the same paper, which may be set differently. */
    abstract StateCanvas sibling(Graphics2D other);

    Graphics2D state() {
        return state;
    }

    @Override
    public Graphics2D create() {
        return sibling((Graphics2D) state.create());
    }

    @Override
    public void dispose() {
        state.dispose();
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {
        StringBuilder plain = new StringBuilder();
        for (char c = text.first(); c != AttributedCharacterIterator.DONE; c = text.next()) {
            plain.append(c);
        }
        drawString(plain.toString(), x, y);
    }

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        fill(glyphs.getOutline(x, y));
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle(x, y, width, height));
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {
        Paint before = getPaint();
        setPaint(getBackground());
        fillRect(x, y, width, height);
        setPaint(before);
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        draw(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        fill(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        draw(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        fill(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int angle) {
        draw(new Arc2D.Double(x, y, width, height, start, angle, Arc2D.OPEN));
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int angle) {
        fill(new Arc2D.Double(x, y, width, height, start, angle, Arc2D.PIE));
    }

    @Override
    public void drawPolyline(int[] x, int[] y, int count) {
        for (int i = 1; i < count; i++) {
            drawLine(x[i - 1], y[i - 1], x[i], y[i]);
        }
    }

    @Override
    public void drawPolygon(int[] x, int[] y, int count) {
        draw(new Polygon(x, y, count));
    }

    @Override
    public void fillPolygon(int[] x, int[] y, int count) {
        fill(new Polygon(x, y, count));
    }

    @Override
    public boolean hit(Rectangle area, Shape shape, boolean onStroke) {
        return state.hit(area, shape, onStroke);
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        return state.getDeviceConfiguration();
    }

    @Override
    public void setComposite(Composite composite) {
        state.setComposite(composite);
    }

    @Override
    public Composite getComposite() {
        return state.getComposite();
    }

    @Override
    public void setPaint(Paint paint) {
        state.setPaint(paint);
    }

    @Override
    public Paint getPaint() {
        return state.getPaint();
    }

    @Override
    public void setColor(Color color) {
        state.setColor(color);
    }

    @Override
    public Color getColor() {
        return state.getColor();
    }

    @Override
    public void setBackground(Color color) {
        state.setBackground(color);
    }

    @Override
    public Color getBackground() {
        return state.getBackground();
    }

    @Override
    public void setStroke(Stroke stroke) {
        state.setStroke(stroke);
    }

    @Override
    public Stroke getStroke() {
        return state.getStroke();
    }

    @Override
    public void setFont(Font font) {
        state.setFont(font);
    }

    @Override
    public Font getFont() {
        return state.getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return state.getFontMetrics(font);
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return state.getFontRenderContext();
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        state.setRenderingHint(key, value);
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return state.getRenderingHint(key);
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {
        state.setRenderingHints(hints);
    }

    @Override
    public void addRenderingHints(Map<?, ?> hints) {
        state.addRenderingHints(hints);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return state.getRenderingHints();
    }

    @Override
    public void translate(int x, int y) {
        state.translate(x, y);
    }

    @Override
    public void translate(double x, double y) {
        state.translate(x, y);
    }

    @Override
    public void rotate(double angle) {
        state.rotate(angle);
    }

    @Override
    public void rotate(double angle, double x, double y) {
        state.rotate(angle, x, y);
    }

    @Override
    public void scale(double x, double y) {
        state.scale(x, y);
    }

    @Override
    public void shear(double x, double y) {
        state.shear(x, y);
    }

    @Override
    public void transform(AffineTransform transform) {
        state.transform(transform);
    }

    @Override
    public void setTransform(AffineTransform transform) {
        state.setTransform(transform);
    }

    @Override
    public AffineTransform getTransform() {
        return state.getTransform();
    }

    @Override
    public void clip(Shape shape) {
        state.clip(shape);
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        state.clipRect(x, y, width, height);
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        state.setClip(x, y, width, height);
    }

    @Override
    public void setClip(Shape shape) {
        state.setClip(shape);
    }

    @Override
    public Shape getClip() {
        return state.getClip();
    }

    @Override
    public Rectangle getClipBounds() {
        return state.getClipBounds();
    }

    @Override
    public void setPaintMode() {
        state.setPaintMode();
    }
}

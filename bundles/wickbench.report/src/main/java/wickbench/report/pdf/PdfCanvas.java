package wickbench.report.pdf;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.PDExtendedGraphicsState;
import org.apache.pdfbox.util.Matrix;
import wickbench.report.text.Typeface;

/** A canvas of Java whose shapes and words go onto a page as shapes and words. */
final class PdfCanvas extends StateCanvas {
    private static final double OPAQUE = 255;

    private final PDPageContentStream page;
    private final Faces faces;
    private final AffineTransform onPage;

    /**
     * @param left where its origin lies on the page
     * @param up where its origin lies on the page, from below
     * @param scale points for one of its units
     */
    PdfCanvas(PDPageContentStream page, Faces faces, double left, double up, double scale) {
        this(page, faces, new AffineTransform(scale, 0, 0, -scale, left, up), blank());
    }

    private PdfCanvas(PDPageContentStream page, Faces faces, AffineTransform onPage, Graphics2D state) {
        super(state);
        this.page = page;
        this.faces = faces;
        this.onPage = onPage;
    }

    @Override
    StateCanvas sibling(Graphics2D other) {
        return new PdfCanvas(page, faces, onPage, other);
    }

    @Override
    public void draw(Shape shape) {
        within(() -> {
            stroke();
            if (trace(shape, here())) {
                page.stroke();
            }
        });
    }

    @Override
    public void fill(Shape shape) {
        within(() -> {
            PathIterator path = shape.getPathIterator(null);
            if (trace(shape, here())) {
                if (path.getWindingRule() == PathIterator.WIND_EVEN_ODD) {
                    page.fillEvenOdd();
                } else {
                    page.fill();
                }
            }
        });
    }

    @Override
    public void drawString(String text, float x, float y) {
        // a typeface loaded from a file is known by its name only
        boolean bold = getFont().getFontName().contains("Bold");
        Face face = faces.face(bold ? Typeface.BOLD : Typeface.PLAIN);
        String visible = VisualOrder.of(face.visible().line(text));
        if (!visible.isBlank()) {
            within(() -> write(visible, face, x, y));
        }
    }

    private void write(String visible, Face face, float x, float y) throws IOException {
        AffineTransform upright = here();
        upright.translate(x, y);
        upright.scale(1, -1);
        page.beginText();
        page.setFont(face.font(), getFont().getSize2D());
        page.setTextMatrix(new Matrix(upright));
        page.showText(visible);
        page.endText();
    }

    /** Draws inside the clip with the colour that is set. */
    private void within(Drawing drawing) {
        try {
            page.saveGraphicsState();
            Shape clip = getClip();
            if (clip != null) {
                clip(clip.getPathIterator(here()));
            }
            color((Color) getPaint());
            drawing.draw();
            page.restoreGraphicsState();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void clip(PathIterator path) throws IOException {
        trace(path);
        page.clip();
    }

    private void color(Color color) throws IOException {
        Color plain = new Color(color.getRGB());
        page.setNonStrokingColor(plain);
        page.setStrokingColor(plain);
        if (color.getAlpha() < OPAQUE) {
            PDExtendedGraphicsState veil = new PDExtendedGraphicsState();
            veil.setNonStrokingAlphaConstant((float) (color.getAlpha() / OPAQUE));
            veil.setStrokingAlphaConstant((float) (color.getAlpha() / OPAQUE));
            page.setGraphicsStateParameters(veil);
        }
    }

    private void stroke() throws IOException {
        BasicStroke stroke = (BasicStroke) getStroke();
        double scale = Math.sqrt(Math.abs(here().getDeterminant()));
        page.setLineWidth((float) (stroke.getLineWidth() * scale));
        page.setLineCapStyle(stroke.getEndCap());
        page.setLineJoinStyle(stroke.getLineJoin());
        float[] dash = stroke.getDashArray();
        if (dash != null) {
            float[] scaled = new float[dash.length];
            for (int i = 0; i < dash.length; i++) {
                scaled[i] = (float) (dash[i] * scale);
            }
            page.setLineDashPattern(scaled, (float) (stroke.getDashPhase() * scale));
        }
    }

    private AffineTransform here() {
        AffineTransform here = new AffineTransform(onPage);
        here.concatenate(getTransform());
        return here;
    }

    private boolean trace(Shape shape, AffineTransform here) throws IOException {
        return trace(shape.getPathIterator(here));
    }

    /** Returns whether there was anything to trace. */
    private boolean trace(PathIterator path) throws IOException {
        boolean any = !path.isDone();
        float[] last = new float[2];
        for (float[] to = new float[6]; !path.isDone(); path.next()) {
            switch (path.currentSegment(to)) {
                case PathIterator.SEG_MOVETO -> page.moveTo(to[0], to[1]);
                case PathIterator.SEG_LINETO -> page.lineTo(to[0], to[1]);
                case PathIterator.SEG_QUADTO -> quad(last, to);
                case PathIterator.SEG_CUBICTO -> page.curveTo(to[0], to[1], to[2], to[3], to[4], to[5]);
                default -> page.closePath();
            }
            last = end(path.currentSegment(to), to, last);
        }
        return any;
    }

    /** A quadratic curve as the cubic one that PDF knows. */
    private void quad(float[] from, float[] to) throws IOException {
        page.curveTo(
                from[0] + 2 * (to[0] - from[0]) / 3,
                from[1] + 2 * (to[1] - from[1]) / 3,
                to[2] + 2 * (to[0] - to[2]) / 3,
                to[3] + 2 * (to[1] - to[3]) / 3,
                to[2],
                to[3]);
    }

    private static float[] end(int segment, float[] to, float[] last) {
        return switch (segment) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> new float[] {to[0], to[1]};
            case PathIterator.SEG_QUADTO -> new float[] {to[2], to[3]};
            case PathIterator.SEG_CUBICTO -> new float[] {to[4], to[5]};
            default -> last;
        };
    }

    private static Graphics2D blank() {
        Graphics2D state = new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB).createGraphics();
        state.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        state.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        return state;
    }

    /** A step that the stream may refuse. */
    private interface Drawing {
        void draw() throws IOException;
    }
}

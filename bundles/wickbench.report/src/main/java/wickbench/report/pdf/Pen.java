package wickbench.report.pdf;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** Draws on one page; lengths in points, from the page's upper left corner. */
final class Pen {
    private final PDPageContentStream page;
    private final Faces faces;

    Pen(PDPageContentStream page, Faces faces) {
        this.page = page;
        this.faces = faces;
    }

    /** Writes a line whose upper edge lies at {@code top}; what its face cannot show is marked. */
    void text(String text, double left, double top, Style style) throws IOException {
        String visible = faces.face(style.typeface()).visible().line(text);
        if (!visible.isEmpty()) {
            page.beginText();
            page.setFont(faces.face(style.typeface()).font(), (float) style.size());
            page.setNonStrokingColor(style.color());
            page.newLineAtOffset((float) left, up(top + style.baseline()));
            page.showText(VisualOrder.of(visible));
            page.endText();
        }
    }

    void textToRight(String text, double right, double top, Style style) throws IOException {
        text(text, right - width(text, style), top, style);
    }

    double width(String text, Style style) {
        Face face = faces.face(style.typeface());
        return face.width(face.visible().line(text), style.size());
    }

    /** Returns the text in lines no wider than {@code width}, with everything in it made visible. */
    List<String> lines(String text, double width, Style style) {
        Face face = faces.face(style.typeface());
        return Wrap.lines(face.visible().lines(text), face, style.size(), width);
    }

    /** Returns a text that fits on one line; a longer one ends in {@code …}. */
    String fitting(String text, double width, Style style) {
        Face face = faces.face(style.typeface());
        String near = face.visible().atMost(text, (int) (width / style.size() * 4));
        while (face.width(near, style.size()) > width && near.length() > 1) {
            near = near.substring(0, near.offsetByCodePoints(near.length(), -2)) + "…";
        }
        return near;
    }

    void fill(double left, double top, double width, double height, Color color) throws IOException {
        page.setNonStrokingColor(color);
        page.addRect((float) left, up(top + height), (float) width, (float) height);
        page.fill();
    }

    void line(double left, double top, double right, double width, Color color) throws IOException {
        page.setStrokingColor(color);
        page.setLineWidth((float) width);
        page.moveTo((float) left, up(top));
        page.lineTo((float) right, up(top));
        page.stroke();
    }

    /** Returns a canvas for drawings, with its origin at a point and so many of its units in a page's point. */
    PdfCanvas canvas(double left, double top, double scale) {
        return new PdfCanvas(page, faces, left, PDRectangle.A4.getHeight() - top, scale);
    }

    private static float up(double down) {
        return (float) (PDRectangle.A4.getHeight() - down);
    }
}

package wickbench.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/** The pages of a document as they fill from above; lengths in points. */
final class Pages {
    static final double LEFT = 51;
    static final double WIDTH = PDRectangle.A4.getWidth() - 2 * LEFT;
    static final double RIGHT = LEFT + WIDTH;
    static final double HEADER = 76;

    private final PDDocument document;
    private final Faces faces;
    private final double bottom;
    private final List<PDPage> all = new ArrayList<>();
    private PDPageContentStream stream;
    private Pen pen;
    private double top;

    /** @param footer how high the foot of each page is */
    Pages(PDDocument document, Faces faces, double footer) throws IOException {
        this.document = document;
        this.faces = faces;
        this.bottom = PDRectangle.A4.getHeight() - footer;
        turn();
    }

    Pen pen() {
        return pen;
    }

    /** Returns where on the page the next thing goes. */
    double top() {
        return top;
    }

    void down(double by) {
        top += by;
    }

    double left() {
        return bottom - top;
    }

    /** Returns how much a whole page holds. */
    double whole() {
        return bottom - HEADER;
    }

    boolean fresh() {
        return top == HEADER;
    }

    /** Turns the page when less than this is left on it, unless it is fresh. */
    void need(double height) throws IOException {
        if (left() < height && !fresh()) {
            turn();
        }
    }

    void turn() throws IOException {
        close();
        PDPage page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        all.add(page);
        stream = new PDPageContentStream(document, page);
        pen = new Pen(stream, faces);
        top = HEADER;
    }

    void close() throws IOException {
        if (stream != null) {
            stream.close();
        }
    }

    /** Draws around each page once their number is known. */
    void around(Surround surround) throws IOException {
        close();
        for (int i = 0; i < all.size(); i++) {
            try (PDPageContentStream over =
                    new PDPageContentStream(document, all.get(i), PDPageContentStream.AppendMode.APPEND, true, true)) {
                surround.draw(new Pen(over, faces), i + 1, all.size());
            }
        }
    }

    /** Makes pages that are longer than A4 smaller until they fit. */
    void shrink(double longer) throws IOException {
        PDRectangle paper = PDRectangle.A4;
        float scale = (float) (paper.getHeight() / (paper.getHeight() + longer));
        Matrix smaller = new Matrix(scale, 0, 0, scale, paper.getWidth() * (1 - scale) / 2, (float) (scale * longer));
        for (PDPage page : all) {
            try (PDPageContentStream before =
                    new PDPageContentStream(document, page, PDPageContentStream.AppendMode.PREPEND, true)) {
                before.transform(smaller);
            }
        }
    }

    /** What stands around a page. */
    interface Surround {
        void draw(Pen pen, int page, int of) throws IOException;
    }
}

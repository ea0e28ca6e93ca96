package wickbench.report.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HeaderTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import wickbench.report.text.Typeface;
import wickbench.report.text.Visible;

/** A typeface embedded in one document, with the widths of its characters. */
final class Face {
    private final PDType0Font font;
    private final TrueTypeFont glyphs;
    private final CmapLookup places;
    private final double unitsPerEm;
    private final Map<Integer, Double> widths = new HashMap<>();

    /** Loads a typeface; only the characters that are used go into the document. */
    Face(PDDocument document, Typeface typeface) throws IOException {
        glyphs = new TTFParser().parse(new RandomAccessReadBuffer(typeface.open()));
        // a ligature would be extracted as other characters than were printed
        glyphs.setEnableGsub(false);
        font = PDType0Font.load(document, glyphs, true);
        places = glyphs.getUnicodeCmapLookup();
        HeaderTable header = glyphs.getHeader();
        unitsPerEm = header.getUnitsPerEm();
    }

    PDType0Font font() {
        return font;
    }

    Visible visible() {
        return new Visible(this::has);
    }

    /** Returns the width of a visible text in points. */
    double width(String text, double size) {
        return text.codePoints().mapToDouble(this::width).sum() * size;
    }

    double width(int codePoint) {
        return widths.computeIfAbsent(codePoint, this::measured);
    }

    private boolean has(int codePoint) {
        return places.getGlyphId(codePoint) != 0;
    }

    private double measured(int codePoint) {
        try {
            return glyphs.getAdvanceWidth(places.getGlyphId(codePoint)) / unitsPerEm;
        } catch (IOException e) {
            throw new IllegalStateException("a font in memory cannot fail to be read", e);
        }
    }
}

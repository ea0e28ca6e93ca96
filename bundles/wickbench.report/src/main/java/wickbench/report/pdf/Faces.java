package wickbench.report.pdf;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import wickbench.report.text.Typeface;

/** All typefaces of one document. */
record Faces(Map<Typeface, Face> all) {

    static Faces of(PDDocument document) throws IOException {
        Map<Typeface, Face> all = new EnumMap<>(Typeface.class);
        for (Typeface typeface : Typeface.values()) {
            all.put(typeface, new Face(document, typeface));
        }
        return new Faces(all);
    }

    Face face(Typeface typeface) {
        return all.get(typeface);
    }
}

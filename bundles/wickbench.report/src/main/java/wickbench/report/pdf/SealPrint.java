package wickbench.report.pdf;

import java.io.IOException;
import java.util.Optional;
import wickbench.api.journal.Checkpoint;
import wickbench.report.ReportWords;

/** A station's seal: the entries drawn from, the checkpoint over them, and its note as a QR code. */
final class SealPrint {
    static final double HEIGHT = 66;
    static final double LINE_HEIGHT = Style.SMALL.leading() + 1;
    private static final double SIDE = 64;

    private SealPrint() {}

    static void draw(Pen pen, StationSeal seal, double top) throws IOException {
        double at = top + 6;
        at = line(
                pen,
                ReportWords.get(
                        seal.first() == seal.last() ? "pdf.seal.one-entry" : "pdf.seal.entries",
                        seal.station(),
                        seal.first(),
                        seal.last()),
                at,
                Style.HEAD);
        Optional<Checkpoint> checkpoint = seal.checkpoint();
        if (checkpoint.isEmpty()) {
            line(pen, ReportWords.get("pdf.seal.absent"), at, Style.SMALL);
            return;
        }
        at = line(pen, ReportWords.get("pdf.seal.size", checkpoint.get().size()), at, Style.SMALL);
        at = line(pen, checkpoint.get().root().hex(), at, Style.FIXED);
        at = line(pen, ReportWords.get(seal.key().isPresent() ? "pdf.seal.key" : "pdf.seal.note"), at, Style.SMALL);
        if (seal.key().isPresent()) {
            line(pen, seal.key().get().hex(), at, Style.FIXED);
        }
        CodeMatrix.qr(checkpoint.get().note()).draw(pen, Pages.RIGHT - SIDE, top + 1, SIDE);
    }

    /** The same on one line, without the code. */
    static void line(Pen pen, StationSeal seal, double top) throws IOException {
        String size = seal.checkpoint()
                .map(checkpoint -> ReportWords.get("pdf.seal.under", checkpoint.size()))
                .orElseGet(() -> ReportWords.get("pdf.seal.absent"));
        pen.text(
                ReportWords.get("pdf.seal.line", seal.station(), seal.first(), seal.last(), size),
                Pages.LEFT,
                top,
                Style.SMALL);
        if (seal.checkpoint().isPresent()) {
            pen.textToRight(seal.checkpoint().get().root().hex(), Pages.RIGHT, top, Style.FIXED);
        }
    }

    private static double line(Pen pen, String text, double top, Style style) throws IOException {
        pen.text(text, Pages.LEFT, top, style);
        return top + style.leading() + 1;
    }
}

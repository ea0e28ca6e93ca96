package wickbench.report.pdf;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import wickbench.report.ReportWords;

/**
 * Head and foot of a page.
 *
 * @param longer how much longer than A4 the page is, downwards
 */
record Frame(Chrome chrome, String title, double longer) implements Pages.Surround {
    /** The codes of more stations than these stand at the end of the report, not on each page. */
    static final int WITH_CODES = 2;

    /** The roots of more stations than these do, too. */
    private static final int IN_LINES = 8;

    private static final double TOP = 34;
    private static final double EDGE_BELOW = 22;
    private static final double GAP = 6;
    private static final Color SIMULATED = new Color(0x8A2F63);

    /** Returns how far above the end of A4 the foot of each page begins. */
    double footer() {
        return EDGE_BELOW + cautionHeight() + GAP + sealsHeight() + GAP - longer;
    }

    @Override
    public void draw(Pen pen, int page, int of) throws IOException {
        head(pen, page, of);
        foot(pen);
    }

    private void head(Pen pen, int page, int of) throws IOException {
        String count = ReportWords.get("pdf.page", page, of);
        double countWidth = pen.width(count, Style.BODY);
        pen.textToRight(count, Pages.RIGHT, TOP, Style.BODY);
        double room = Pages.WIDTH - countWidth - 20;
        pen.text(pen.fitting(chrome.plant(), room, Style.STRONG), Pages.LEFT, TOP, Style.STRONG);
        double second = TOP + Style.STRONG.leading();
        double printedWidth = pen.width(chrome.printed(), Style.SMALL);
        pen.textToRight(chrome.printed(), Pages.RIGHT, second + 1, Style.SMALL);
        pen.text(pen.fitting(title, Pages.WIDTH - printedWidth - 20, Style.NAME), Pages.LEFT, second, Style.NAME);
        double edge = second + Style.NAME.leading() + 3;
        pen.line(Pages.LEFT, edge, Pages.RIGHT, 0.8, Style.INK);
        if (chrome.simulated().isPresent()) {
            simulated(pen, chrome.simulated().get());
        }
    }

    private static void simulated(Pen pen, String words) throws IOException {
        Style style = Style.HEAD.in(Color.WHITE);
        double width = pen.width(words, style) + 12;
        double left = (PDRectangle.A4.getWidth() - width) / 2;
        pen.fill(left, TOP - 18, width, 13, SIMULATED);
        pen.text(words, left + 6, TOP - 16.5, style);
    }

    private void foot(Pen pen) throws IOException {
        double top = PDRectangle.A4.getHeight() - footer() + GAP;
        pen.line(Pages.LEFT, top, Pages.RIGHT, 0.5, Style.EDGE);
        seals(pen, top + GAP / 2);
        double caution = PDRectangle.A4.getHeight() + longer - EDGE_BELOW - cautionHeight();
        for (String line : pen.lines(ReportWords.get("pdf.caution"), Pages.WIDTH, Style.SMALL)) {
            pen.text(line, Pages.LEFT, caution, Style.SMALL);
            caution += Style.SMALL.leading();
        }
    }

    private void seals(Pen pen, double top) throws IOException {
        double at = top;
        for (StationSeal seal : inLines() ? chrome.seals() : List.<StationSeal>of()) {
            if (withCodes()) {
                SealPrint.draw(pen, seal, at);
            } else {
                SealPrint.line(pen, seal, at);
            }
            at += sealHeight();
        }
        if (!inLines()) {
            pen.text(ReportWords.get("pdf.seal.at-the-end", chrome.seals().size()), Pages.LEFT, at, Style.SMALL);
        } else if (chrome.seals().isEmpty()) {
            pen.text(ReportWords.get("pdf.seal.nothing"), Pages.LEFT, at, Style.SMALL);
        }
    }

    private boolean withCodes() {
        return chrome.seals().size() <= WITH_CODES;
    }

    private boolean inLines() {
        return chrome.seals().size() <= IN_LINES;
    }

    private double sealHeight() {
        return withCodes() ? SealPrint.HEIGHT : SealPrint.LINE_HEIGHT;
    }

    private double sealsHeight() {
        return Math.max(
                Style.SMALL.leading(), inLines() ? sealHeight() * chrome.seals().size() : 0);
    }

    private static double cautionHeight() {
        return 2 * Style.SMALL.leading();
    }
}

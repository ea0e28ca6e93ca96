package wickbench.report.pdf;

import java.io.IOException;
import java.util.List;
import wickbench.api.report.Section.Notice;
import wickbench.report.text.Typeface;

/** Prints a notice: a band of colour, a shape, a word and what it means. */
record NoticePrint(Pages pages) {
    private static final Style WORD = new Style(Typeface.BOLD, 12, Style.INK);
    private static final double BAND = 4;
    private static final double INDENT = 32;
    private static final double SHAPE = 12;

    void print(Notice notice) throws IOException {
        Tones tones = Tones.of(notice.tone());
        List<String> text = pages.pen().lines(notice.text(), Pages.WIDTH - INDENT - 8, Style.BODY);
        pages.need(WORD.leading() + Math.min(text.size(), 4) * Style.BODY.leading() + 14);
        ground(tones, 6);
        List<String> word = pages.pen().lines(notice.word(), Pages.WIDTH - INDENT - 8, WORD);
        for (int i = 0; i < word.size(); i++) {
            double top = ground(tones, WORD.leading());
            pages.pen().text(word.get(i), Pages.LEFT + INDENT, top, WORD.in(tones.ink()));
            if (i == 0) {
                tones.shape(pages.pen().canvas(Pages.LEFT + BAND + 8, top + 1.5, 1), notice.tone(), SHAPE);
            }
        }
        for (String line : notice.text().isEmpty() ? List.<String>of() : text) {
            pages.pen().text(line, Pages.LEFT + INDENT, ground(tones, Style.BODY.leading()), Style.BODY);
        }
        ground(tones, 6);
        pages.down(6);
    }

    /** Lays the ground of one line, on the next page if there is no room, and returns where the line begins. */
    private double ground(Tones tones, double height) throws IOException {
        pages.need(height);
        double top = pages.top();
        // a hair more, so that no seam shows between two lines
        pages.pen().fill(Pages.LEFT, top, Pages.WIDTH, height + 0.2, tones.wash());
        pages.pen().fill(Pages.LEFT, top, BAND, height + 0.2, tones.mark());
        pages.down(height);
        return top;
    }
}

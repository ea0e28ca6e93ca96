package wickbench.report.pdf;

import java.io.IOException;
import java.util.List;
import wickbench.api.report.Section.Fact;
import wickbench.api.report.Section.Facts;

/** Prints words: title, headings, paragraphs and lists of facts. */
record TextPrint(Pages pages) {
    private static final double NAMES = 0.27;

    void title(String text) throws IOException {
        lines(text, Style.TITLE);
        pages.down(6);
    }

    /**
     * Prints a heading, which stays with what follows it.
     *
     * @param least how much of that must stand on the same page
     */
    void heading(String text, double least) throws IOException {
        if (!pages.fresh()) {
            pages.down(8);
        }
        pages.need(2 * Style.HEADING.leading() + least);
        lines(text, Style.HEADING);
        pages.down(3);
    }

    void paragraph(String text) throws IOException {
        lines(text, Style.BODY);
        pages.down(5);
    }

    void facts(Facts facts) throws IOException {
        Grid grid = new Grid(
                pages,
                List.of(Pages.WIDTH * NAMES, Pages.WIDTH * (1 - NAMES)),
                List.of(Style.NAME, Style.BODY),
                column -> false,
                () -> {});
        for (Fact fact : facts.facts()) {
            grid.row(List.of(fact.name(), fact.value()));
        }
        pages.down(6);
    }

    private void lines(String text, Style style) throws IOException {
        for (String line : pages.pen().lines(text, Pages.WIDTH, style)) {
            pages.need(style.leading());
            pages.pen().text(line, Pages.LEFT, pages.top(), style);
            pages.down(style.leading());
        }
    }
}

package wickbench.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Prints rows of cells. A row that does not fit goes onto the next page; one that no page can hold is continued there.
 *
 * @param widths of the columns, in points
 * @param toRight tells which columns stand to the right
 * @param onTurn draws what is repeated on top of each page
 */
record Grid(Pages pages, List<Double> widths, List<Style> styles, IntPredicate toRight, Turn onTurn) {
    /** Between a cell's words and its left and right edge. */
    static final double PAD = 3;

    private static final double RISE = 2.2;

    /** Draws on top of a page; returns nothing, moves the pages down. */
    interface Turn {
        void draw() throws IOException;
    }

    void row(List<String> cells) throws IOException {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            lines.add(pages.pen().lines(cells.get(i), widths.get(i) - 2 * PAD, styles.get(i)));
        }
        lines(lines);
    }

    private void lines(List<List<String>> cells) throws IOException {
        int count = cells.stream().mapToInt(List::size).max().orElse(1);
        double height = count * leading() + 2 * RISE;
        if (height > pages.left() && height <= pages.whole() / 2) {
            turn();
        }
        int from = 0;
        while (from < count) {
            int fit = (int) ((pages.left() - 2 * RISE) / leading());
            if (fit < 1) {
                turn();
                fit = Math.max(1, (int) ((pages.left() - 2 * RISE) / leading()));
            }
            int to = Math.min(count, from + fit);
            part(cells, from, to);
            from = to;
        }
    }

    private void part(List<List<String>> cells, int from, int to) throws IOException {
        double left = Pages.LEFT;
        for (int i = 0; i < cells.size(); i++) {
            for (int n = from; n < Math.min(to, cells.get(i).size()); n++) {
                double top = pages.top() + RISE + (n - from) * leading();
                String text = cells.get(i).get(n);
                if (toRight.test(i)) {
                    pages.pen().textToRight(text, left + widths.get(i) - PAD, top, styles.get(i));
                } else {
                    pages.pen().text(text, left + PAD, top, styles.get(i));
                }
            }
            left += widths.get(i);
        }
        pages.down((to - from) * leading() + 2 * RISE);
        pages.pen().line(Pages.LEFT, pages.top(), left, 0.4, Style.EDGE);
    }

    private void turn() throws IOException {
        pages.turn();
        onTurn.draw();
    }

    private double leading() {
        return styles.stream().mapToDouble(Style::leading).max().orElseThrow();
    }
}

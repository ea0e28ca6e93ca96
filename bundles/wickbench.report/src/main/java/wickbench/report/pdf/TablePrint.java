package wickbench.report.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import wickbench.api.report.Section.Column;
import wickbench.api.report.Section.Table;
import wickbench.report.ReportWords;

/** Prints a table; its header stands on top of each page that it runs over. */
final class TablePrint {
    /** As many rows are looked at to find how wide the columns must be. */
    private static final int LOOKED_AT = 200;

    private static final int LONGEST_LOOK = 200;
    private static final int HEADER_LINES = 8;

    private final Pages pages;
    private final List<Column> columns;
    private final List<Double> widths;
    private final Grid rows;

    private TablePrint(Pages pages, List<Column> columns, List<List<String>> some) {
        this.pages = pages;
        this.columns = columns;
        this.widths = widths(some);
        List<Style> styles = Collections.nCopies(columns.size(), Style.CELL);
        this.rows = new Grid(pages, widths, styles, i -> columns.get(i).number(), this::header);
    }

    static void print(Pages pages, Table table) throws IOException {
        if (table.columns().isEmpty()) {
            return;
        }
        Iterator<List<String>> rows = table.rows().iterator();
        List<List<String>> some = new ArrayList<>();
        while (rows.hasNext() && some.size() < LOOKED_AT) {
            some.add(rows.next());
        }
        TablePrint print = new TablePrint(pages, table.columns(), some);
        pages.need(5 * Style.CELL.leading());
        print.header();
        for (List<String> row : some) {
            print.rows.row(row);
        }
        while (rows.hasNext()) {
            print.rows.row(rows.next());
        }
        if (some.isEmpty()) {
            pages.pen().text(ReportWords.get("pdf.table.empty"), Pages.LEFT + Grid.PAD, pages.top() + 3, Style.NAME);
            pages.down(Style.NAME.leading() + 6);
        }
        pages.down(8);
    }

    private void header() throws IOException {
        List<List<String>> titles = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            titles.add(title(columns.get(i).title(), widths.get(i) - 2 * Grid.PAD));
        }
        int lines = titles.stream().mapToInt(List::size).max().orElse(1);
        double height = lines * Style.HEAD.leading() + 2 * Grid.PAD;
        pages.pen().fill(Pages.LEFT, pages.top(), Pages.WIDTH, height, Style.WASH);
        double left = Pages.LEFT;
        for (int i = 0; i < columns.size(); i++) {
            words(titles.get(i), i, left);
            left += widths.get(i);
        }
        pages.down(height);
        pages.pen().line(Pages.LEFT, pages.top(), Pages.RIGHT, 0.8, Style.INK);
    }

    private void words(List<String> lines, int column, double left) throws IOException {
        double top = pages.top() + Grid.PAD;
        for (String line : lines) {
            if (columns.get(column).number()) {
                pages.pen().textToRight(line, left + widths.get(column) - Grid.PAD, top, Style.HEAD);
            } else {
                pages.pen().text(line, left + Grid.PAD, top, Style.HEAD);
            }
            top += Style.HEAD.leading();
        }
    }

    private List<String> title(String title, double width) {
        List<String> lines = pages.pen().lines(title, width, Style.HEAD);
        if (lines.size() <= HEADER_LINES) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, HEADER_LINES - 1));
        first.add("…");
        return first;
    }

    /** Every column gets what its widest word needs, then a share of the rest by how much it would like. */
    private List<Double> widths(List<List<String>> some) {
        double[] least = new double[columns.size()];
        double[] wanted = new double[columns.size()];
        for (int i = 0; i < columns.size(); i++) {
            look(i, columns.get(i).title(), Style.HEAD, least, wanted);
            for (List<String> row : some) {
                look(i, row.get(i), Style.CELL, least, wanted);
            }
        }
        return share(least, wanted);
    }

    private void look(int column, String cell, Style style, double[] least, double[] wanted) {
        String near = cell.length() > LONGEST_LOOK ? cell.substring(0, LONGEST_LOOK) : cell;
        double most = Pages.WIDTH / 3;
        for (String line : near.split("\\R")) {
            wanted[column] = Math.max(wanted[column], pages.pen().width(line, style) + 2 * Grid.PAD + 1);
            for (String word : line.split("[\\s-]")) {
                double wide = Math.min(most, pages.pen().width(word + "-", style) + 2 * Grid.PAD + 1);
                least[column] = Math.max(least[column], wide);
            }
        }
    }

    private static List<Double> share(double[] least, double[] wanted) {
        double needed =
                IntStream.range(0, least.length).mapToDouble(i -> least[i]).sum();
        double liked = IntStream.range(0, least.length)
                .mapToDouble(i -> Math.max(least[i], wanted[i]))
                .sum();
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < least.length; i++) {
            double more = Math.max(least[i], wanted[i]) - least[i];
            if (needed >= Pages.WIDTH) {
                widths.add(least[i] * Pages.WIDTH / needed);
            } else if (liked <= Pages.WIDTH) {
                widths.add((least[i] + more) * Pages.WIDTH / liked);
            } else {
                widths.add(least[i] + more * (Pages.WIDTH - needed) / (liked - needed));
            }
        }
        return widths;
    }
}

package wickbench.console;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Lays out a table in plain text: columns as wide as they need to be, two blanks between them. */
final class TextTable {
    private static final String GAP = "  ";

    private TextTable() {}

    static List<String> of(List<String> header, List<List<String>> rows) {
        int[] widths = widths(header, rows);
        List<String> lines = new ArrayList<>();
        lines.add(line(header, widths));
        lines.add(line(rule(widths), widths));
        rows.forEach(row -> lines.add(line(row, widths)));
        return lines;
    }

    private static int[] widths(List<String> header, List<List<String>> rows) {
        int[] widths = new int[header.size()];
        for (List<String> row : concat(header, rows)) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], length(row.get(i)));
            }
        }
        return widths;
    }

    private static List<List<String>> concat(List<String> header, List<List<String>> rows) {
        List<List<String>> all = new ArrayList<>(Collections.singleton(header));
        all.addAll(rows);
        return all;
    }

    private static List<String> rule(int[] widths) {
        List<String> cells = new ArrayList<>();
        for (int width : widths) {
            cells.add("─".repeat(width));
        }
        return cells;
    }

    private static String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = cells.get(i);
            line.append(i == 0 ? "" : GAP).append(cell).append(" ".repeat(widths[i] - length(cell)));
        }
        return line.toString().stripTrailing();
    }

    private static int length(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}

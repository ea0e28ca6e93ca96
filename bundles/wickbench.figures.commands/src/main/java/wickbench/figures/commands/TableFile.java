package wickbench.figures.commands;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;

/**
 * Reads a table of numbers: CSV (RFC 4180) with commas, semicolons or tabs, with or without a header.
 *
 * <p>The first row is a header when each of its cells begins with a letter. A header that names all columns says in which order
 * they stand and may name more; any other header, and none, leaves the order as the command states it.
 */
final class TableFile {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d{1,3})?");
    private static final Pattern HEADING = Pattern.compile("\\p{L}.*");
    private static final Pattern NO_NUMBER = Pattern.compile("(?i)nan|na|inf|infinity");

    private final TableText text;

    private TableFile(TableText text) {
        this.text = text;
    }

    /** Reads the named columns. */
    static Table read(Path file, String... columns) {
        return new TableFile(text(file)).table(List.of(columns));
    }

    /** Reads as many columns as there are, the same number in each row. */
    static Table read(Path file) {
        return new TableFile(text(file)).table(List.of());
    }

    static TableText text(Path file) {
        try {
            return TableText.read(file);
        } catch (IOException e) {
            throw new BadInput(Complaint.of(file.toString(), FiguresWords.get("table.unreadable", FileTrouble.of(e))));
        }
    }

    private Table table(List<String> columns) {
        List<TableText.Line> lines = text.lines();
        boolean headed = !lines.isEmpty() && isHeader(lines.get(0).cells());
        if (lines.size() < (headed ? 2 : 1)) {
            throw new BadInput(Complaint.of(text.source(), FiguresWords.get("table.empty")));
        }
        int[] places = places(columns, lines.get(0).cells(), headed);
        int width = headed || columns.isEmpty() ? lines.get(0).cells().size() : columns.size();
        List<Table.Row> rows = new ArrayList<>();
        for (TableText.Line line : lines.subList(headed ? 1 : 0, lines.size())) {
            rows.add(row(line, width, places));
        }
        return new Table(text.source(), rows);
    }

    static boolean isHeader(List<String> cells) {
        return cells.stream()
                .allMatch(cell -> HEADING.matcher(cell).matches()
                        && !NO_NUMBER.matcher(cell).matches());
    }

    /** Returns where each wanted column stands. */
    private int[] places(List<String> columns, List<String> first, boolean headed) {
        List<String> names =
                first.stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
        if (headed && !columns.isEmpty() && names.containsAll(columns)) {
            return columns.stream().mapToInt(names::indexOf).toArray();
        }
        if (headed && !columns.isEmpty() && names.size() != columns.size()) {
            throw complaint(1, FiguresWords.get("table.columns", String.join(", ", columns), String.join(", ", first)));
        }
        return java.util.stream.IntStream.range(0, columns.isEmpty() ? first.size() : columns.size())
                .toArray();
    }

    private Table.Row row(TableText.Line line, int width, int[] places) {
        if (line.cells().size() != width) {
            throw complaint(
                    line.number(),
                    FiguresWords.get("table.cell-count", line.cells().size(), width));
        }
        double[] cells = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            cells[i] = number(text, line, line.cells().get(places[i]));
        }
        return new Table.Row(line.number(), cells);
    }

    /** Returns the number in a cell, or ends with its line. */
    static double number(TableText text, TableText.Line line, String cell) {
        String plain = text.decimalComma() ? cell.replace(',', '.') : cell;
        double value = NUMBER.matcher(plain).matches() ? Double.parseDouble(plain) : Double.NaN;
        if (!Double.isFinite(value)) {
            throw new BadInput(
                    Complaint.at(text.source(), line.number(), "", FiguresWords.get("table.not-a-number", cell)));
        }
        return value;
    }

    static boolean isNumber(String cell) {
        return NUMBER.matcher(cell.replace(',', '.')).matches();
    }

    private BadInput complaint(int line, String what) {
        return new BadInput(Complaint.at(text.source(), line, "", what));
    }
}

package wickbench.figures.sums;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import wickbench.api.check.Complaint;

/**
 * Reads a table of numbers, with or without a header.
 *
 * <p>A header that names all columns says in which order they stand and may name more; any other header, and none, leaves the order
 * as the sum states it.
 *
 * @param input whose table it is
 */
record TableReader(String input, TableText text) {

    /** Reads the named columns; without names as many as there are, the same number in each row. */
    Table table(List<String> columns) {
        List<TableText.Line> body = text.body();
        if (body.isEmpty()) {
            throw new Wrong(input, Complaint.of(text.source(), SumWords.get("table.empty")));
        }
        List<String> first = text.lines().get(0).cells();
        int[] places = places(columns, first);
        int width = text.isHeaded() || columns.isEmpty() ? first.size() : columns.size();
        List<Table.Row> rows = new ArrayList<>();
        for (TableText.Line line : body) {
            rows.add(row(line, width, places));
        }
        return new Table(input, text, rows);
    }

    /** Returns the number in a cell, or ends with its line. */
    double number(TableText.Line line, String cell) {
        Optional<BigDecimal> read = text.decimalComma() ? Numbers.of(cell) : Numbers.pointed(cell);
        double value = read.map(BigDecimal::doubleValue).orElse(Double.NaN);
        if (!Double.isFinite(value)) {
            throw complaint(line, "table.not-a-number", cell);
        }
        return value;
    }

    Wrong complaint(TableText.Line line, String key, Object... facts) {
        return new Wrong(input, Complaint.at(text.source(), line.number(), "", SumWords.get(key, facts)));
    }

    /** Returns where each wanted column stands. */
    private int[] places(List<String> columns, List<String> first) {
        List<String> names =
                first.stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
        if (text.isHeaded() && !columns.isEmpty() && names.containsAll(columns)) {
            return columns.stream().mapToInt(names::indexOf).toArray();
        }
        if (text.isHeaded() && !columns.isEmpty() && names.size() != columns.size()) {
            throw complaint(text.lines().get(0), "table.columns", String.join(", ", columns), String.join(", ", first));
        }
        return IntStream.range(0, columns.isEmpty() ? first.size() : columns.size())
                .toArray();
    }

    private Table.Row row(TableText.Line line, int width, int[] places) {
        if (line.cells().size() != width) {
            throw complaint(line, "table.cell-count", line.cells().size(), width);
        }
        double[] cells = new double[places.length];
        for (int i = 0; i < places.length; i++) {
            cells[i] = number(line, line.cells().get(places[i]));
        }
        return new Table.Row(line.number(), cells);
    }
}

package wickbench.figures.commands;

import java.util.Arrays;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.figures.Inputs;

/**
 * The numbers of a file, row by row.
 *
 * @param source the file's name, for complaints
 * @param rows at least one
 */
record Table(String source, List<Row> rows) {

    /**
     * One row.
     *
     * @param line where it stands in the file, counted from 1
     * @param cells its numbers
     */
    record Row(int line, double[] cells) {}

    int lineOf(int row) {
        return rows.get(row).line();
    }

    int size() {
        return rows.size();
    }

    /** Returns a column as numbers. */
    double[] numbers(int column) {
        return rows.stream().mapToDouble(row -> row.cells()[column]).toArray();
    }

    /** Returns a column as counts, or ends with the line of the first cell that is none. */
    long[] counts(int column, String name) {
        return rows.stream()
                .mapToLong(row -> count(row.line(), row.cells()[column], name))
                .toArray();
    }

    /** Returns all cells as counts, row by row. */
    long[][] counts(String name) {
        return rows.stream()
                .map(row -> Arrays.stream(row.cells())
                        .mapToLong(cell -> count(row.line(), cell, name))
                        .toArray())
                .toArray(long[][]::new);
    }

    private long count(int line, double value, String name) {
        if (value != Math.rint(value) || value < 0 || value > Inputs.LARGEST_COUNT) {
            throw new BadInput(
                    Complaint.at(source, line, name, FiguresWords.get("table.not-a-count", TableText.plain(value))));
        }
        return (long) value;
    }
}

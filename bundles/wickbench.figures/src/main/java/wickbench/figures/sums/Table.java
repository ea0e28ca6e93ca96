package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Supplier;
import wickbench.api.check.Complaint;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * The numbers of a table, row by row.
 *
 * @param input whose table it is
 * @param text as it was written
 * @param rows at least one
 */
record Table(String input, TableText text, List<Row> rows) {

    /**
     * One row.
     *
     * @param line where it stands in the file, counted from 1
     * @param cells its numbers
     */
    record Row(int line, double[] cells) {}

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

    double[][] cells() {
        return rows.stream().map(Row::cells).toArray(double[][]::new);
    }

    /** Lets something be made of these rows; a refusal of a row names its line here. */
    <T> T told(Supplier<T> made) {
        try {
            return made.get();
        } catch (NoAnswer none) {
            throw refused(input, text, none);
        }
    }

    Wrong wrong(int row, String field, String key, Object... facts) {
        return new Wrong(input, Complaint.at(text.source(), rows.get(row).line(), field, SumWords.get(key, facts)));
    }

    /** Tells a refusal as one of this table. */
    static Wrong refused(String input, TableText text, NoAnswer none) {
        OptionalInt line = none.row().isPresent()
                ? OptionalInt.of(text.body().get(none.row().getAsInt()).number())
                : OptionalInt.empty();
        return new Wrong(input, new Complaint(text.source(), line, none.field(), none.text()));
    }

    private long count(int line, double value, String name) {
        if (value != Math.rint(value) || value < 0 || value > Inputs.LARGEST_COUNT) {
            throw new Wrong(
                    input,
                    Complaint.at(text.source(), line, name, SumWords.get("table.not-a-count", TableText.plain(value))));
        }
        return (long) value;
    }
}

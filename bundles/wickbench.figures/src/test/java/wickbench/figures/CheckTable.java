package wickbench.figures;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** A table of published or independently computed values, kept beside the tests. */
public record CheckTable(double[] header, List<double[]> rows) {

    /** Reads a table of numbers; heading cells that are words count as NaN. */
    public static CheckTable beside(Class<?> test, String name) {
        try (BufferedReader text = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(test.getResourceAsStream(name), name), StandardCharsets.UTF_8))) {
            List<double[]> lines = text.lines().map(CheckTable::numbers).toList();
            return new CheckTable(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static double[] numbers(String line) {
        return Arrays.stream(line.replace("\"", "").split(","))
                .mapToDouble(CheckTable::number)
                .toArray();
    }

    private static double number(String cell) {
        try {
            return Double.parseDouble(cell);
        } catch (NumberFormatException word) {
            return Double.NaN;
        }
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * A table of outside check values among the test resources.
 *
 * @param header the column names
 * @param rows the cells
 */
public record CheckTable(List<String> header, List<List<String>> rows) {

    public static CheckTable of(String file) {
        try (var in = CheckTable.class.getResourceAsStream("/wickbench/figures/" + file)) {
            List<List<String>> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> Arrays.asList(line.replace("\"", "").split(",")))
                    .toList();
            return new CheckTable(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the rows that hold this value in this column. */
    public CheckTable where(String column, String value) {
        return where(column, value::equals);
    }

    public CheckTable where(String column, Predicate<String> wanted) {
        int place = header.indexOf(column);
        return new CheckTable(
                header, rows.stream().filter(row -> wanted.test(row.get(place))).toList());
    }

    public double[] numbers(String column) {
        int place = header.indexOf(column);
        return rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.get(place)))
                .toArray();
    }

    public long[] counts(String column) {
        return Arrays.stream(numbers(column)).mapToLong(value -> (long) value).toArray();
    }

    /** Returns all cells as counts, row by row. */
    public long[][] counts() {
        return rows.stream()
                .map(row -> row.stream().mapToLong(Long::parseLong).toArray())
                .toArray(long[][]::new);
    }
}

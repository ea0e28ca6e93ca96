package wickbench.figures;

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
public record NamedTable(List<String> header, List<List<String>> rows) {

    public static NamedTable of(String file) {
        try (var in = NamedTable.class.getResourceAsStream("/wickbench/figures/" + file)) {
            List<List<String>> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> Arrays.asList(line.replace("\"", "").split(",")))
                    .toList();
            return new NamedTable(lines.get(0), lines.subList(1, lines.size()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the rows that hold this value in this column. */
    public NamedTable where(String column, String value) {
        return where(column, value::equals);
    }

    public NamedTable where(String column, Predicate<String> wanted) {
        int place = header.indexOf(column);
        return new NamedTable(
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

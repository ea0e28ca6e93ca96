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
    }
}

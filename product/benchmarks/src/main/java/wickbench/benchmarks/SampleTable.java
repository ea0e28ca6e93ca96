package wickbench.benchmarks;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.report.Section.Column;
import wickbench.api.report.Section.Figure;
import wickbench.api.report.Section.Table;

/** A table of invented results in a file of comma-separated values, from which both sides read it. */
record SampleTable(Path file) {
    private static final List<Column> COLUMNS = List.of(
            Column.number("No."),
            Column.text("Read at"),
            Column.text("Place"),
            Column.text("Allergen"),
            Column.text("Lot"),
            Column.number("mg/kg"),
            Column.text("Outcome"));
    private static final List<String> ALLERGENS = List.of("milk", "egg", "peanut", "hazelnut", "gluten", "soya");
    private static final long FIRST = 1_764_000_000L;
    private static final long SECONDS_APART = 137;
    private static final int PLACES = 40;
    private static final int PER_LOT = 250;
    /** Place of the column of findings. */
    private static final int FOUND = 5;

    static SampleTable write(Path file, int rows) throws IOException {
        Random chance = new Random(rows);
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(String.join(",", COLUMNS.stream().map(Column::title).toList()) + "\n");
            for (int row = 1; row <= rows; row++) {
                out.write(row(row, chance) + "\n");
            }
        }
        return new SampleTable(file);
    }

    private static String row(int row, Random chance) {
        double found = chance.nextInt(100) / 10.0;
        return String.join(
                ",",
                Integer.toString(row),
                Instant.ofEpochSecond(FIRST + row * SECONDS_APART).toString(),
                "Line " + (1 + chance.nextInt(PLACES)),
                ALLERGENS.get(chance.nextInt(ALLERGENS.size())),
                "LOT-" + row / PER_LOT,
                String.format(Locale.ROOT, "%.1f", found),
                found > 5 ? "detected" : "not detected");
    }

    /** Calls with the table as a section of a report, whose rows are read as they are asked for. */
    void read(Use use) throws IOException {
        // no cell of ours holds a comma or a quote
        try (Stream<String> lines = Files.lines(file)) {
            use.with(new Table(COLUMNS, lines.skip(1).map(line -> List.of(line.split(",")))::iterator));
        }
    }

    /** What is done with a table. */
    interface Use {
        void with(Table table) throws IOException;
    }

    /** Returns the findings as a chart, in the order of the rows. */
    Figure figure() throws IOException {
        try (Stream<String> lines = Files.lines(file)) {
            double[] found = lines.skip(1)
                    .mapToDouble(line -> Double.parseDouble(line.split(",")[FOUND]))
                    .toArray();
            double[] row =
                    IntStream.rangeClosed(1, found.length).asDoubleStream().toArray();
            Series series = new Series("found", Series.Mark.LINE, row, found);
            Axis x = Axis.linear("No.", "");
            return new Figure(new Chart("Findings", x, Axis.linear("found", "mg/kg"), List.of(series), List.of()));
        }
    }
}

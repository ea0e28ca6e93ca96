package wickbench.report.chart;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Random;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;

/** Charts of an invented plant. */
public final class Charts {
    private static final double DAY = 86_400_000;

    private Charts() {}

    /** A fridge through the spring night in which the clocks of Zurich skip an hour, with a gap while the logger was out. */
    public static Chart fridge() {
        double start = Instant.parse("2026-03-27T00:00:00Z").toEpochMilli();
        int count = 4 * 288;
        double[] x = new double[count];
        double[] y = new double[count];
        Random chance = new Random(7);
        for (int i = 0; i < count; i++) {
            x[i] = start + i * 300_000.0;
            y[i] = 5 + 1.2 * Math.sin(i / 40.0) + chance.nextGaussian() * 0.25 + (i > 700 && i < 720 ? 4.5 : 0);
        }
        for (int i = 400; i < 460; i++) {
            y[i] = Double.NaN;
        }
        return new Chart(
                "Kit fridge K2, stockroom",
                Axis.time("Local time", ZoneId.of("Europe/Zurich")),
                Axis.linear("Temperature", "°C"),
                List.of(new Series("Fridge K2", Series.Mark.LINE, x, y)),
                List.of(new Chart.Limit("highest allowed 8 °C", 8), new Chart.Limit("lowest allowed 2 °C", 2)));
    }

    /** Detection curves on a logarithmic axis. */
    public static Chart detection() {
        double[] dose = {0.5, 1, 2, 4, 8, 16};
        return new Chart(
                "Share of strips read as Positive",
                new Axis("Hazelnut protein in the extract", "mg/kg", new Axis.Logarithmic()),
                Axis.linear("Positive", "%"),
                List.of(
                        new Series("Lot 4471", Series.Mark.LINE_AND_POINTS, dose, new double[] {2, 9, 38, 81, 97, 100}),
                        new Series("Lot 4480", Series.Mark.LINE_AND_POINTS, dose, new double[] {1, 5, 24, 70, 95, 99}),
                        new Series(
                                "Lot 4502", Series.Mark.LINE_AND_POINTS, dose, new double[] {4, 15, 51, 88, 99, 100}),
                        new Series("Second reader", Series.Mark.POINTS, dose, new double[] {3, 12, 40, 79, 98, 100})),
                List.of(new Chart.Limit("95 % detected", 95)));
    }

    /** Bars side by side over places with names. */
    public static Chart bars() {
        double[] places = {0, 1, 2, 3};
        return new Chart(
                "Positives by place",
                new Axis("Place", "", new Axis.Named(List.of("Filler", "Conveyor 2", "Depositor", "Cutting table"))),
                Axis.linear("Strips", ""),
                List.of(
                        new Series("Before cleaning", Series.Mark.BARS, places, new double[] {9, 4, 12, 6}),
                        new Series("After cleaning", Series.Mark.BARS, places, new double[] {1, 0, 2, 0})),
                List.of());
    }

    /** Stock in steps. */
    public static Chart stock() {
        double start = Instant.parse("2026-02-01T00:00:00Z").toEpochMilli();
        double[] x = {start, start + 9 * DAY, start + 15 * DAY, start + 22 * DAY, start + 40 * DAY};
        return new Chart(
                "Strips left",
                Axis.time("Date", ZoneId.of("Europe/Zurich")),
                Axis.linear("Strips", ""),
                List.of(
                        new Series("Milk", Series.Mark.STEPS, x, new double[] {100, 76, 40, 90, 52}),
                        new Series("Hazelnut", Series.Mark.STEPS, x, new double[] {50, 44, 30, 12, 8})),
                List.of(new Chart.Limit("order again", 20)));
    }
}

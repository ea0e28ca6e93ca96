package wickbench.training.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.drill.DrillPlan;
import wickbench.drill.DrillResult;

/** How often a line was called seen, against its contrast. */
final class ContrastCurve {
    private static final int POINTS = 120;

    private ContrastCurve() {}

    static Chart of(DrillResult result) {
        List<Series> series = new ArrayList<>();
        double span = DrillPlan.PLAIN / DrillPlan.FAINTEST;
        double[] contrasts = IntStream.range(0, POINTS)
                .mapToDouble(i -> DrillPlan.FAINTEST * Math.pow(span, i / (POINTS - 1.0)))
                .toArray();
        series.add(new Series(
                TrainingUiWords.get("curve.curve"),
                Series.Mark.LINE,
                IntStream.range(0, POINTS).mapToDouble(i -> 100 * contrasts[i]).toArray(),
                IntStream.range(0, POINTS)
                        .mapToDouble(i -> 100 * result.seen(contrasts[i]))
                        .toArray()));
        series.add(new Series(
                TrainingUiWords.get("curve.shown"),
                Series.Mark.POINTS,
                result.tallies().stream()
                        .mapToDouble(tally -> 100 * tally.contrast())
                        .toArray(),
                result.tallies().stream()
                        .mapToDouble(tally -> 100.0 * tally.seen() / tally.shown())
                        .toArray()));
        series.add(across("curve.threshold", result.threshold()));
        series.add(across("curve.lower", result.lower()));
        series.add(across("curve.upper", result.upper()));
        return new Chart(
                TrainingUiWords.get("curve.title"),
                new Axis(TrainingUiWords.get("curve.contrast"), "%", new Axis.Logarithmic()),
                Axis.linear(TrainingUiWords.get("curve.seen"), "%"),
                series,
                List.of());
    }

    private static Series across(String name, double contrast) {
        double x = 100 * contrast;
        return new Series(TrainingUiWords.get(name), Series.Mark.LINE, new double[] {x, x}, new double[] {0, 100});
    }
}

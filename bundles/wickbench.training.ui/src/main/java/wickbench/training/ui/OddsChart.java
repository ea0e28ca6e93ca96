package wickbench.training.ui;

import java.util.List;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.training.Operating;

/** The chance to pass a design, against the chance of seeing a faint line. */
final class OddsChart {
    private OddsChart() {}

    static Chart of(Operating found) {
        List<Operating.Point> curve = found.curve();
        return new Chart(
                TrainingUiWords.get("design.chart"),
                Axis.linear(TrainingUiWords.get("design.chart.near"), "%"),
                Axis.linear(TrainingUiWords.get("design.chart.passes"), "%"),
                List.of(new Series(
                        TrainingUiWords.get("design.chart.passes"),
                        Series.Mark.LINE,
                        curve.stream().mapToDouble(point -> 100 * point.near()).toArray(),
                        curve.stream()
                                .mapToDouble(point -> 100 * point.passes())
                                .toArray())),
                List.of());
    }
}

package wickbench.ledger.ui.trend;

import java.util.List;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.ledger.trend.Trending.Mark;

/** A chart of the figures with the weeks or events in place of the numbers of its points. */
final class NamedChart {
    private NamedChart() {}

    static Chart of(Chart chart, List<Mark> marks, String title, String axis) {
        return new Chart(
                title,
                new Axis(axis, "", new Axis.Named(marks.stream().map(Mark::name).toList())),
                chart.y(),
                chart.series().stream().map(NamedChart::fromZero).toList(),
                chart.limits(),
                chart.bands());
    }

    /** The sums count points from 1, names from 0. */
    private static Series fromZero(Series series) {
        double[] x = series.x().clone();
        for (int i = 0; i < x.length; i++) {
            x[i] -= 1;
        }
        return new Series(series.name(), series.mark(), x, series.y());
    }
}

package wickbench.report.chart;

import java.util.List;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartWindow;

/** What drawing a chart needs and no window of it changes; made once, in the time of all its points. */
public final class PreparedChart {
    private final ChartWindow whole;
    private final List<Extremes> series;

    private PreparedChart(ChartWindow whole, List<Extremes> series) {
        this.whole = whole;
        this.series = series;
    }

    public static PreparedChart of(Chart chart) {
        return new PreparedChart(
                ChartWindow.whole(chart),
                chart.series().stream()
                        .map(series -> Extremes.of(series, chart.y().scale()))
                        .toList());
    }

    /** Returns the window that shows everything. */
    public ChartWindow whole() {
        return whole;
    }

    /** Returns the points of a series by its place in the chart. */
    Extremes series(int place) {
        return series.get(place);
    }
}

package wickbench.figures.sums;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.figures.trend.Cusum;
import wickbench.figures.trend.LimitChart;
import wickbench.figures.trend.Point;

/** Draws trend charts. */
final class TrendPlots {
    private TrendPlots() {}

    /** Points between their limits; those that count for nothing stand apart. */
    static Chart limits(LimitChart chart, String y) {
        List<Point> points = chart.points();
        List<Series> series = new ArrayList<>();
        series.add(drawn("points", Series.Mark.LINE_AND_POINTS, points, p -> p.counted() ? p.value() : Double.NaN));
        series.add(drawn("upper", Series.Mark.STEPS, points, Point::upper));
        series.add(drawn("lower", Series.Mark.STEPS, points, Point::lower));
        if (points.stream().anyMatch(point -> !point.counted())) {
            series.add(drawn("set-aside", Series.Mark.POINTS, points, p -> p.counted() ? Double.NaN : p.value()));
        }
        return Plots.with(
                Plots.chart(Plots.axis("point"), Plots.axis(y), series.toArray(Series[]::new)),
                Plots.limit("centre", chart.centre()));
    }

    /** The sums upwards above zero, those downwards below it. */
    static Chart sums(Cusum cusum, Cusum.Chart chart) {
        return Plots.with(
                Plots.chart(
                        Plots.axis("point"),
                        Plots.axis("sum"),
                        drawn("sum-high", Series.Mark.LINE_AND_POINTS, chart.points(), Cusum.Sums::high),
                        drawn("sum-low", Series.Mark.LINE_AND_POINTS, chart.points(), sums -> -sums.low())),
                Plots.limit("interval", cusum.interval()),
                Plots.limit("interval-low", -cusum.interval()));
    }

    private static <T> Series drawn(String name, Series.Mark mark, List<T> points, ToDoubleFunction<T> y) {
        return Plots.series(
                name,
                mark,
                Plots.counted(points.size(), 1),
                points.stream().mapToDouble(y).toArray());
    }
}

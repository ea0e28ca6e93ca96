package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.figures.Limits;

/** Makes the plots of sums; names are keys of words. */
final class Plots {
    private static final int POINTS = 201;

    private Plots() {}

    static Axis axis(String name) {
        return Axis.linear(SumWords.get("axis." + name), "");
    }

    static Axis logarithm(String name) {
        return new Axis(SumWords.get("axis." + name), "", new Axis.Logarithmic());
    }

    static Axis places(String name, List<String> places) {
        return new Axis(SumWords.get("axis." + name), "", new Axis.Named(places));
    }

    static Chart chart(Axis x, Axis y, Series... series) {
        return new Chart("", x, y, List.of(series), List.of());
    }

    static Chart with(Chart chart, Chart.Limit... limits) {
        return new Chart(chart.title(), chart.x(), chart.y(), chart.series(), List.of(limits));
    }

    static Chart.Limit limit(String name, double y) {
        return new Chart.Limit(SumWords.get("series." + name), y);
    }

    /** Follows a function over a stretch of x, in equal steps. */
    static Series curve(String name, double from, double to, DoubleUnaryOperator of) {
        return curve(name, POINTS, from, to, of);
    }

    /** Follows a function that takes long, at so many points. */
    static Series curve(String name, int points, double from, double to, DoubleUnaryOperator of) {
        double[] x = IntStream.range(0, points)
                .mapToDouble(i -> from + (to - from) * i / (points - 1))
                .toArray();
        return curve(name, x, of);
    }

    /** Follows a function over a stretch of x above 0, in equal ratios. */
    static Series curveOfRatios(String name, double from, double to, DoubleUnaryOperator of) {
        double[] x = IntStream.range(0, POINTS)
                .mapToDouble(i -> from * Math.pow(to / from, (double) i / (POINTS - 1)))
                .toArray();
        return curve(name, x, of);
    }

    private static Series curve(String name, double[] x, DoubleUnaryOperator of) {
        return series(name, Series.Mark.LINE, x, Arrays.stream(x).map(of).toArray());
    }

    static Series series(String name, Series.Mark mark, double[] x, double[] y) {
        return new Series(SumWords.get("series." + name), mark, x, y);
    }

    /** Puts values at the places 0, 1, 2, … */
    static Series inOrder(String name, Series.Mark mark, double... y) {
        return series(name, mark, counted(y.length, 0), y);
    }

    /** Numbers so many points from a first one on. */
    static double[] counted(int points, int first) {
        return IntStream.range(0, points).mapToDouble(i -> i + first).toArray();
    }

    /** Estimates side by side with their limits. */
    static Chart limits(String y, List<String> places, List<Limits> limits) {
        return chart(
                places("none", places),
                axis(y),
                inOrder("estimate", Series.Mark.POINTS, each(limits, Limits::estimate)),
                inOrder("lower", Series.Mark.POINTS, each(limits, Limits::lower)),
                inOrder("upper", Series.Mark.POINTS, each(limits, Limits::upper)));
    }

    private static double[] each(List<Limits> limits, java.util.function.ToDoubleFunction<Limits> part) {
        return limits.stream().mapToDouble(part).toArray();
    }

    static String word(String key) {
        return SumWords.get("series." + key);
    }
}

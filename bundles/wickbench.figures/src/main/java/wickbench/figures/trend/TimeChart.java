package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickbench.figures.Inputs;

/**
 * The t chart of times between events: single values of y = t^0.2777, ȳ ± 3·mean|yᵢ − yᵢ₋₁| ÷ 1.128, drawn in y and in t.
 *
 * <p>The power makes exponential times nearly normal: Nelson, Journal of Quality Technology 26:239 (1994).
 *
 * @param transformed in y, the scale on which it is decided
 * @param times centre, points and limits brought back by y^(1/0.2777), in the unit of the times
 */
public record TimeChart(LimitChart transformed, LimitChart times) {
    private static final double POWER = 0.2777;

    /**
     * Makes the chart.
     *
     * @param times between events, above or equal 0, at least two
     */
    public static TimeChart of(List<Double> times) {
        Series.atLeast(times, 2);
        double[] y = transformed(times);
        return of(times, y, Series.mean(y), Series.spread(y), Series.median(y));
    }

    /**
     * Makes the chart with limits of an earlier period; runs are about its centre.
     *
     * @param centre of that period, as a time
     * @param spread mean|yᵢ − yᵢ₋₁| ÷ 1.128 of that period, in y
     */
    public static TimeChart of(List<Double> times, double centre, double spread) {
        Series.atLeast(times, 1);
        double middle = Math.pow(Inputs.notNegative("centre", centre), POWER);
        return of(times, transformed(times), middle, Inputs.notNegative("spread", spread), middle);
    }

    private static double[] transformed(List<Double> times) {
        double[] t = Series.each(Series.numbers(times), time -> Inputs.notNegative("time", time));
        return Arrays.stream(t).map(time -> Math.pow(time, POWER)).toArray();
    }

    private static TimeChart of(List<Double> times, double[] y, double centre, double spread, double median) {
        double half = Series.SIGMAS * spread;
        List<Point> points = new ArrayList<>(y.length);
        for (double value : y) {
            points.add(new Point(points.size() + 1, value, Math.max(0, centre - half), centre + half, true));
        }
        LimitChart transformed = LimitChart.withRuns(centre, median, points);
        return new TimeChart(transformed, back(transformed, times));
    }

    private static LimitChart back(LimitChart chart, List<Double> times) {
        DoubleUnaryOperator back = y -> Math.pow(y, 1 / POWER);
        List<Point> points = chart.points().stream()
                .map(point -> new Point(
                        point.number(),
                        times.get(point.number() - 1),
                        back.applyAsDouble(point.lower()),
                        back.applyAsDouble(point.upper()),
                        true))
                .toList();
        return new LimitChart(back.applyAsDouble(chart.centre()), points, signals(chart, points));
    }

    /** What was decided in y, told in t. */
    private static List<Signal> signals(LimitChart chart, List<Point> points) {
        return chart.signals().stream().map(signal -> told(signal, points)).toList();
    }

    private static Signal told(Signal signal, List<Point> points) {
        if (signal.point() == 0) {
            return signal;
        }
        Point point = points.get(signal.point() - 1);
        boolean above = signal.kind() == Signal.Kind.ABOVE_LIMIT;
        return new Signal(signal.kind(), signal.point(), point.value(), above ? point.upper() : point.lower());
    }
}

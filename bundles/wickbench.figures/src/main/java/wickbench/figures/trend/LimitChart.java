package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;

/**
 * Points between limits around a centre.
 *
 * @param centre the centre line
 * @param points in the order of time
 * @param signals points out of their limits, then what the runs say
 */
public record LimitChart(double centre, List<Point> points, List<Signal> signals) {
    public LimitChart {
        points = List.copyOf(points);
        signals = List.copyOf(signals);
    }

    /** Makes a chart of independent points, whose runs are looked at about {@code middle}. */
    static LimitChart withRuns(double centre, double middle, List<Point> points) {
        List<Signal> signals = outOfLimits(points);
        List<Double> counted =
                points.stream().filter(Point::counted).map(Point::value).toList();
        signals.addAll(Runs.of(counted, middle).signals());
        return new LimitChart(centre, points, signals);
    }

    /** Makes a chart whose points depend on those before, so that their runs say nothing. */
    static LimitChart withoutRuns(double centre, List<Point> points) {
        return new LimitChart(centre, points, outOfLimits(points));
    }

    private static List<Signal> outOfLimits(List<Point> points) {
        List<Signal> found = new ArrayList<>();
        for (Point point : points) {
            if (point.above()) {
                found.add(new Signal(Signal.Kind.ABOVE_LIMIT, point.number(), point.value(), point.upper()));
            } else if (point.below()) {
                found.add(new Signal(Signal.Kind.BELOW_LIMIT, point.number(), point.value(), point.lower()));
            }
        }
        return found;
    }
}

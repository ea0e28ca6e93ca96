package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;
import wickbench.figures.Inputs;

/**
 * The exponentially weighted moving average: zᵢ = λxᵢ + (1 − λ)zᵢ₋₁ from z₀ = target, limits target ± Lσ√(λ/(2 − λ)).
 *
 * <p>Source: NIST/SEMATECH e-Handbook §6.3.2.4.
 *
 * @param target the centre, and the average before the first point
 * @param sigma the standard deviation of single values
 * @param weight λ, above 0, at most 1
 * @param width L, in standard deviations of the average; 3 as a rule
 */
public record Ewma(double target, double sigma, double weight, double width) {
    public Ewma {
        Inputs.finite("target", target);
        Inputs.positive("sigma", sigma);
        Inputs.positive("lambda", Inputs.probability("lambda", weight));
        Inputs.positive("L", width);
    }

    /** Returns the chart with the limits that hold after many points. */
    public LimitChart of(List<Double> values) {
        return chart(values, false);
    }

    /** Returns the chart with the limits of each point: those of many points × √(1 − (1 − λ)²ⁱ). */
    public LimitChart withStartingLimits(List<Double> values) {
        return chart(values, true);
    }

    private LimitChart chart(List<Double> values, boolean starting) {
        Series.atLeast(values, 1);
        Series.finite(values);
        List<Point> points = new ArrayList<>(values.size());
        double average = target;
        for (double value : values) {
            int number = points.size() + 1;
            average = weight * value + (1 - weight) * average;
            double half = half(starting ? 1 - Math.pow(1 - weight, 2.0 * number) : 1);
            points.add(new Point(number, average, target - half, target + half, true));
        }
        return LimitChart.withoutRuns(target, points);
    }

    private double half(double share) {
        return width * sigma * Math.sqrt(weight / (2 - weight) * share);
    }
}

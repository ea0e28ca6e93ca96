package wickbench.figures.trend;

import java.util.ArrayList;
import java.util.List;
import wickbench.figures.Inputs;

/**
 * The tabular cumulative sum: C⁺ᵢ = max(0, xᵢ − μ₀ − k + C⁺ᵢ₋₁), C⁻ᵢ = max(0, μ₀ − k − xᵢ + C⁻ᵢ₋₁), a signal above h.
 *
 * <p>Sources: NIST/SEMATECH e-Handbook §6.3.2.3; Montgomery, <em>Introduction to Statistical Quality Control</em>, chapter 9.
 *
 * @param target μ₀
 * @param slack k, in the unit of the values: half the shift that should be found
 * @param interval h, the decision interval, in the unit of the values
 */
public record Cusum(double target, double slack, double interval) {
    public Cusum {
        Inputs.finite("target", target);
        Inputs.notNegative("k", slack);
        Inputs.positive("h", interval);
    }

    /** Returns the chart with k and h stated in standard deviations. */
    public static Cusum inSigmas(double target, double sigma, double k, double h) {
        Inputs.positive("sigma", sigma);
        return new Cusum(target, Inputs.notNegative("k", k) * sigma, Inputs.positive("h", h) * sigma);
    }

    /**
     * The sums after a point.
     *
     * @param number counted from 1
     * @param value as measured
     * @param high C⁺
     * @param highRun N⁺, for how many points C⁺ has been above 0
     * @param low C⁻
     * @param lowRun N⁻
     * @param plain Σ(x − μ₀)
     */
    public record Sums(int number, double value, double high, int highRun, double low, int lowRun, double plain) {}

    /**
     * What the chart shows.
     *
     * @param points the sums after each point
     * @param signals the first point of each stay above the interval
     */
    public record Chart(List<Sums> points, List<Signal> signals) {
        public Chart {
            points = List.copyOf(points);
            signals = List.copyOf(signals);
        }
    }

    /** Sums up the values in the order of time. */
    public Chart of(List<Double> values) {
        Series.atLeast(values, 1);
        Series.finite(values);
        List<Sums> points = new ArrayList<>(values.size());
        List<Signal> signals = new ArrayList<>();
        Sums before = new Sums(0, target, 0, 0, 0, 0, 0);
        for (double value : values) {
            Sums now = after(before, value);
            points.add(now);
            signals.addAll(signals(before, now));
            before = now;
        }
        return new Chart(points, signals);
    }

    /** Returns where the process now seems to be: μ₀ + k + C⁺/N⁺ while C⁺ is the larger sum, else μ₀ − k − C⁻/N⁻; μ₀ when both are 0. */
    public double estimate(Sums sums) {
        if (sums.high() >= sums.low()) {
            return sums.highRun() == 0 ? target : target + slack + sums.high() / sums.highRun();
        }
        return target - slack - sums.low() / sums.lowRun();
    }

    private Sums after(Sums before, double value) {
        double off = value - target;
        double high = Math.max(0, off - slack + before.high());
        double low = Math.max(0, -off - slack + before.low());
        return new Sums(
                before.number() + 1,
                value,
                high,
                high > 0 ? before.highRun() + 1 : 0,
                low,
                low > 0 ? before.lowRun() + 1 : 0,
                before.plain() + off);
    }

    private List<Signal> signals(Sums before, Sums now) {
        List<Signal> found = new ArrayList<>(2);
        if (now.high() > interval && before.high() <= interval) {
            found.add(new Signal(Signal.Kind.SUM_HIGH, now.number(), now.high(), interval));
        }
        if (now.low() > interval && before.low() <= interval) {
            found.add(new Signal(Signal.Kind.SUM_LOW, now.number(), now.low(), interval));
        }
        return found;
    }
}

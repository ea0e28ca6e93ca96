package wickbench.figures.distribution;

import wickbench.figures.Inputs;

/**
 * Student's t distribution.
 *
 * @param df degrees of freedom, at least 1
 */
public record StudentT(long df) {
    private static final int MOST_STEPS = 100;

    public StudentT {
        Inputs.size("df", df);
    }

    /** Returns P(T &gt; t) for t from 0 on. */
    public double above(double t) {
        Inputs.notNegative("t", t);
        if (t == 0) {
            return 0.5;
        }
        double square = t * t;
        return square < df
                ? new Beta(0.5, df / 2d).at(square / (df + square)).upper() / 2
                : new Beta(df / 2d, 0.5).at(df / (df + square)).lower() / 2;
    }

    /** Returns t with P(T &gt; t) = tail, for a tail below ½. */
    public double upperQuantile(double tail) {
        if (!(tail > 0 && tail < 0.5)) {
            Inputs.level("tail", Double.NaN);
        }
        double low = 0;
        double high = 1;
        while (above(high) > tail) {
            low = high;
            high *= 2;
        }
        // Newton on the logarithm, kept between two sides
        double t = (low + high) / 2;
        for (int i = 0; i < MOST_STEPS; i++) {
            double here = above(t);
            low = here > tail ? t : low;
            high = here > tail ? high : t;
            double next = t + Math.log(here / tail) * here / density(t);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - t) <= Math.ulp(t)) {
                return next;
            }
            t = next;
        }
        return t;
    }

    /** The density; its constant is that of a beta distribution, up to a factor. */
    private double density(double t) {
        double x = df / (df + t * t);
        return Mass.binomial(df / 2d, (df + 1) / 2d, x, Twin.of(t * t / (df + t * t)))
                        .times((df / 2d) * 0.5 / ((df + 1) / 2d))
                        .value()
                / Math.abs(t);
    }
}

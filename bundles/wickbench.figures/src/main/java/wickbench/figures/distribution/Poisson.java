package wickbench.figures.distribution;

import wickbench.figures.Inputs;

/**
 * Counts of rare events.
 *
 * @param mean the mean, above 0
 */
public record Poisson(double mean) {
    public Poisson {
        Inputs.positive("mean", mean);
    }

    /** Returns P(X = k). */
    public double mass(long k) {
        return k < 0 ? 0 : Mass.poisson(k, mean).value();
    }

    /** Returns P(X ≤ k). */
    public double atMost(long k) {
        return k < 0 ? 0 : Gamma.at(k + 1.0, mean).upper();
    }

    /** Returns P(X &gt; k). */
    public double above(long k) {
        return k < 0 ? 1 : Gamma.at(k + 1.0, mean).lower();
    }

    /** Returns the smallest k with P(X ≤ k) ≥ q, q between 0 and 1. */
    public long quantile(double q) {
        Inputs.level("q", q);
        long high = 1;
        while (atMost(high) < q) {
            high *= 2;
        }
        long low = -1;
        while (high - low > 1) {
            long middle = (low + high) >> 1;
            if (atMost(middle) >= q) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }
}

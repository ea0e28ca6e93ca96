package wickbench.figures.distribution;

import org.hipparchus.special.Erf;
import wickbench.figures.Inputs;

/** The standard normal distribution. */
public final class Normal {
    private static final double SQRT2 = Math.sqrt(2);

    private Normal() {}

    /** Returns P(Z ≤ z). */
    public static double below(double z) {
        return 0.5 * Erf.erfc(-z / SQRT2);
    }

    /** Returns P(Z &gt; z). */
    public static double above(double z) {
        return 0.5 * Erf.erfc(z / SQRT2);
    }

    /**
     * Returns z with P(Z ≤ z) = p.
     *
     * @param p between 0 and 1, both excluded
     */
    public static double quantile(double p) {
        Inputs.level("p", p);
        return -SQRT2 * Erf.erfcInv(2 * p);
    }

    /** Returns the two-sided critical value for a confidence level: 1.959964 for 0.95. */
    public static double twoSided(double confidence) {
        Inputs.level("level", confidence);
        return -quantile((1 - confidence) / 2);
    }
}

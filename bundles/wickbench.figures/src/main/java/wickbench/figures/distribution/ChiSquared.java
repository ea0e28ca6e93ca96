package wickbench.figures.distribution;

import wickbench.figures.Inputs;

/** The distribution of a sum of squares of standard normal numbers. */
public final class ChiSquared {
    private ChiSquared() {}

    /**
     * Returns P(X &gt; x), the p-value of a chi-squared statistic.
     *
     * @param x from 0 on
     * @param df degrees of freedom, at least 1
     */
    public static double above(double x, long df) {
        Inputs.notNegative("x", x);
        Inputs.size("df", df);
        if (x == 0) {
            return 1;
        }
        return df == 1
                ? 2 * Normal.above(Math.sqrt(x))
                : Gamma.at(df / 2d, x / 2).upper();
    }
}

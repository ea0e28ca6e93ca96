package wickbench.figures.proportion;

import wickbench.figures.Inputs;
import wickbench.figures.Limits;

/** Limits of a proportion x of n. */
public final class Proportions {
    private Proportions() {}

    /**
     * Returns x/n with two-sided limits.
     *
     * @param x positives, from 0 to n
     * @param n tests, at least 1
     * @param level confidence, between 0 and 1
     */
    public static Limits wilson(long x, long n, double level) {
        check(x, n, level);
        return Wilson.limits(x, n, level);
    }

    private static void check(long x, long n, double level) {
        Inputs.size("N", n);
        Inputs.part("X", x, "N", n);
        Inputs.level("level", level);
    }
}

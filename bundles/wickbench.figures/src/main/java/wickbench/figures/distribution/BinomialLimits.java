package wickbench.figures.distribution;

import wickbench.figures.Inputs;

/** The chance of success at which a count, or one as extreme, still has a given probability. */
public final class BinomialLimits {
    private BinomialLimits() {}

    /** Returns p with P(X ≥ x | n, p) = tail; 0 for x = 0. */
    public static double lower(long x, long n, double tail) {
        check(x, n, tail);
        if (x == 0) {
            return 0;
        }
        return x == n ? Math.exp(Math.log(tail) / n) : new Beta(x, n - x + 1).lowerQuantile(tail);
    }

    /** Returns p with P(X ≤ x | n, p) = tail; 1 for x = n. */
    public static double upper(long x, long n, double tail) {
        check(x, n, tail);
        if (x == n) {
            return 1;
        }
        return x == 0 ? -Math.expm1(Math.log(tail) / n) : new Beta(x + 1, n - x).upperQuantile(tail);
    }

    private static void check(long x, long n, double tail) {
        Inputs.size("N", n);
        Inputs.part("X", x, "N", n);
        Inputs.level("tail", tail);
    }
}

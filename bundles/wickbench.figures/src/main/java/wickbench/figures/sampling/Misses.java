package wickbench.figures.sampling;

import java.math.BigDecimal;
import java.math.MathContext;
import wickbench.figures.NoAnswer;

/** Counts independent samples until the chance that all are clean is small enough. */
final class Misses {
    /** Far more digits than a double, so that a chance met exactly is seen as met. */
    private static final MathContext DIGITS = new MathContext(60);

    private static final double MOST = 500_000_000;

    private Misses() {}

    /**
     * Returns the smallest n with {@code clean}^n ≤ {@code allowed}.
     *
     * @param guess n as floating point numbers give it, right up to their rounding
     */
    static int smallest(BigDecimal clean, BigDecimal allowed, double guess) {
        if (guess > MOST) {
            throw NoAnswer.of("prevalence", "prevalence.too-rare");
        }
        int n = Math.max(1, (int) Math.ceil(guess));
        while (n > 1 && meets(clean, n - 1, allowed)) {
            n--;
        }
        while (!meets(clean, n, allowed)) {
            n++;
        }
        return n;
    }

    private static boolean meets(BigDecimal clean, int n, BigDecimal allowed) {
        return clean.pow(n, DIGITS).compareTo(allowed) <= 0;
    }
}

package wickbench.figures.proportion;

import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;

/** The difference of two proportions, with hybrid score limits that never leave −1 to 1. */
public final class Differences {
    private Differences() {}

    /**
     * Returns x₁/n₁ − x₂/n₂ for two separate samples.
     *
     * <p>Limits d − √((p₁−l₁)² + (u₂−p₂)²) and d + √((u₁−p₁)² + (p₂−l₂)²) with Wilson's l and u (Newcombe, Stat. Med. 17:873, 1998,
     * method 10; the dPOD of the AOAC guidelines). The difference is significant when the limits exclude 0.
     */
    public static Limits unpaired(long x1, long n1, long x2, long n2, double level) {
        Inputs.size("N1", n1);
        Inputs.size("N2", n2);
        Inputs.part("X1", x1, "N1", n1);
        Inputs.part("X2", x2, "N2", n2);
        Limits first = Interval.WILSON.of(x1, n1, level);
        Limits second = Interval.WILSON.of(x2, n2, level);
        return hybrid(first.estimate() - second.estimate(), first, second, 0);
    }

    /**
     * Returns the first method's proportion less the second's, both used on the same samples.
     *
     * <p>As for separate samples, with the correlation φ of the table below the roots (Newcombe, Stat. Med. 17:2635, 1998, method
     * 10).
     *
     * @param both samples positive by both
     * @param firstOnly positive by the first only
     * @param secondOnly positive by the second only
     * @param neither negative by both
     */
    public static Limits paired(long both, long firstOnly, long secondOnly, long neither, double level) {
        Inputs.count("A", both);
        Inputs.count("B", firstOnly);
        Inputs.count("C", secondOnly);
        Inputs.count("D", neither);
        long n = both + firstOnly + secondOnly + neither;
        if (n == 0) {
            throw NoAnswer.of("", "table.all-zero");
        }
        Limits first = Interval.WILSON.of(both + firstOnly, n, level);
        Limits second = Interval.WILSON.of(both + secondOnly, n, level);
        double difference = (double) (firstOnly - secondOnly) / n;
        return hybrid(difference, first, second, correlation(both, firstOnly, secondOnly, neither, n));
    }

    private static Limits hybrid(double difference, Limits first, Limits second, double correlation) {
        double down = side(first.estimate() - first.lower(), second.upper() - second.estimate(), correlation);
        double up = side(first.upper() - first.estimate(), second.estimate() - second.lower(), correlation);
        return new Limits(difference, Math.max(-1, difference - down), Math.min(1, difference + up));
    }

    private static double side(double one, double other, double correlation) {
        return Math.sqrt(Math.max(0, one * one - 2 * correlation * one * other + other * other));
    }

    private static double correlation(double a, double b, double c, double d, double n) {
        double margins = (a + b) * (c + d) * (a + c) * (b + d);
        if (margins == 0) {
            return 0;
        }
        double product = a * d - b * c;
        double corrected = product < 0 ? product : Math.max(0, product - n / 2);
        return corrected / Math.sqrt(margins);
    }
}

package wickbench.figures.proportion;

import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.distribution.BinomialLimits;
import wickbench.figures.distribution.Normal;

/** A way to put two-sided limits around a proportion x/n. All run from 0 to 1 and meet 0 and 1 exactly where x is 0 or n. */
public enum Interval {
    /**
     * The score interval: (x + z²/2 ∓ z√(x(n−x)/n + z²/4)) / (n + z²) (Wilson, J. Am. Stat. Assoc. 22:209, 1927). It is also what
     * the guidelines of AOAC for binary methods (Official Methods, Appendices J and N) ask for one laboratory's probability of
     * detection, with 0/n giving (0, z²/(n+z²)).
     */
    WILSON("wilson") {
        @Override
        Limits around(long x, long n, double level) {
            double z = Normal.twoSided(level);
            double half = z * Math.sqrt((double) x * (n - x) / n + z * z / 4);
            double middle = x + z * z / 2;
            double total = n + z * z;
            return clamped(x, n, (middle - half) / total, (middle + half) / total);
        }
    },
    /** The score interval with correction for continuity (Newcombe, Stat. Med. 17:857, 1998, method 4). */
    WILSON_CORRECTED("wilson-cc") {
        @Override
        Limits around(long x, long n, double level) {
            double z = Normal.twoSided(level);
            double square = z * z;
            double p = (double) x / n;
            double lower = 2 * x + square - 1 - z * Math.sqrt(square - 2 - 1d / n + 4 * p * (n - x + 1));
            double upper = 2 * x + square + 1 + z * Math.sqrt(square + 2 - 1d / n + 4 * p * (n - x - 1));
            return clamped(x, n, lower / (2 * (n + square)), upper / (2 * (n + square)));
        }
    },
    /** The exact interval (Clopper and Pearson, Biometrika 26:404, 1934): never less than its nominal level. */
    EXACT("exact") {
        @Override
        Limits around(long x, long n, double level) {
            double tail = (1 - level) / 2;
            return clamped(x, n, BinomialLimits.lower(x, n, tail), BinomialLimits.upper(x, n, tail));
        }
    },
    /** The exact interval with half the probability of x itself in each tail (Newcombe 1998, method 6). */
    MID_P("mid-p") {
        @Override
        Limits around(long x, long n, double level) {
            double tail = (1 - level) / 2;
            return clamped(x, n, MidP.lower(x, n, tail), MidP.upper(x, n, tail));
        }
    };

    private final String code;

    Interval(String code) {
        this.code = code;
    }

    /** Returns the name on the command line and in files. */
    public String code() {
        return code;
    }

    /**
     * Returns x/n between its limits.
     *
     * @param x positives, from 0 to n
     * @param n tests, at least 1
     * @param level confidence, between 0 and 1
     */
    public Limits of(long x, long n, double level) {
        Inputs.size("N", n);
        Inputs.part("X", x, "N", n);
        Inputs.level("level", level);
        return around(x, n, level);
    }

    abstract Limits around(long x, long n, double level);

    private static Limits clamped(long x, long n, double lower, double upper) {
        // written so that a root of a negative number, which a wide correction can ask for at the edge, is the edge
        double from = x == 0 || !(lower > 0) ? 0 : lower;
        double to = x == n || !(upper < 1) ? 1 : upper;
        return new Limits((double) x / n, from, to);
    }
}

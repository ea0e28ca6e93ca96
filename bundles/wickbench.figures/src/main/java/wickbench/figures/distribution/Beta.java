package wickbench.figures.distribution;

import java.util.function.DoubleFunction;

/**
 * The beta distribution, whose tails are the binomial's (regularised incomplete beta function).
 *
 * <p>The tail away from the mean comes from the continued fraction of Didonato and Morris (ACM Trans. Math. Softw. 18:360, 1992,
 * eq. 9), the other one as its complement.
 */
final class Beta {
    private static final double TINY = 1e-300;
    private static final double EPSILON = 0x1p-53;
    private static final double CLOSE = 1e-5;
    private static final double UNSEEN = 4 * EPSILON;
    private static final int MOST_STEPS = 100_000;

    private final double a;
    private final double b;

    Beta(double a, double b) {
        this.a = a;
        this.b = b;
    }

    /**
     * Both tails at x.
     *
     * @param lower P(X ≤ x)
     * @param upper P(X &gt; x)
     * @param logLower ln of the first, valid where it underflows too
     * @param logUpper ln of the second
     * @param logDensity ln of the density of ln X
     */
    record Tails(double lower, double upper, double logLower, double logUpper, double logDensity) {
        private Tails mirrored() {
            return new Tails(upper, lower, logUpper, logLower, logDensity);
        }

        private static Tails ofSmaller(Mass small, double logDensity) {
            double tail = small.value();
            return new Tails(tail, 1 - tail, small.logValue(), Math.log1p(-tail), logDensity);
        }
    }

    /** Returns the tails at x, which lies between 0 and 1. */
    Tails at(double x) {
        Twin other = Twin.sum(1, -x);
        // x^a (1−x)^b / B(a,b) is a binomial probability with a factor
        Mass front = Mass.binomial(a, a + b, x, other).times(a * b / (a + b));
        double logDensity = front.logValue() - Math.log(other.high());
        // how far x lies below the mean, times a + b
        double below = Twin.of(a).minus(Twin.product(a + b, x)).high();
        return below >= 0
                ? Tails.ofSmaller(front.times(1 / fraction(a, b, x, other.high(), below)), logDensity)
                : Tails.ofSmaller(front.times(1 / fraction(b, a, other.high(), x, -below)), logDensity)
                        .mirrored();
    }

    /** The continued fraction by Lentz's method; up to step b all its terms are positive, so nothing cancels. */
    private static double fraction(double a, double b, double x, double y, double below) {
        double value = a * (below + 1) / (a + 1);
        double c = value;
        double d = 0;
        for (int m = 1; m < MOST_STEPS; m++) {
            double odd = a + 2 * m - 1;
            double over = (a + m - 1) / odd * ((a + b + m - 1) / odd) * m * (b - m) * x * x;
            double under = m + m * (b - m) * x / odd + (a + m) * (below + 1 + m * (1 + y)) / (odd + 2);
            d = 1 / guarded(under + over * d);
            c = guarded(under + over / c);
            double step = c * d;
            value *= step;
            if (Math.abs(step - 1) <= EPSILON) {
                return value;
            }
        }
        throw new ArithmeticException("the continued fraction did not settle: " + a + " " + b + " " + x);
    }

    private static double guarded(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }

    /** Returns x with P(X ≤ x) = tail; b must be at least 1. */
    double lowerQuantile(double tail) {
        double logTail = Math.log(tail);
        return halley(startLower(tail), x -> {
            Tails here = at(x);
            double slope = Math.exp(here.logDensity - here.logLower);
            return new Step(logTail - here.logLower, slope, bend(x) - slope);
        });
    }

    /** Returns x with P(X &gt; x) = tail; b must be at least 1. */
    double upperQuantile(double tail) {
        double logTail = Math.log(tail);
        double start = 1 - new Beta(b, a).startLower(tail);
        return halley(start > 0 && start < 1 ? start : 0.5, x -> {
            Tails here = at(x);
            double slope = -Math.exp(here.logDensity - here.logUpper);
            return new Step(logTail - here.logUpper, slope, bend(x) - slope);
        });
    }

    /** How the logarithm of the density of ln X changes with ln x. */
    private double bend(double x) {
        return a - (b - 1) * x / (1 - x);
    }

    /**
     * @param missing what the logarithm of the tail still lacks
     * @param slope its change with ln x
     * @param bend the change of the slope, per slope
     */
    private record Step(double missing, double slope, double bend) {
        double by() {
            double newton = missing / slope;
            double second = 1 + newton * bend / 2;
            return newton / Math.min(2, Math.max(0.5, second));
        }
    }

    /**
     * Halley's method on the logarithms of x and of the tail: for b ≥ 1 both tails are log-concave in ln x, so it cannot run away.
     * It triples the digits at each step, so a step from near by is the last; and so is one that x can hardly show, which near 1
     * may leave the tail far from its goal for ever.
     */
    private static double halley(double start, DoubleFunction<Step> steps) {
        double x = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            Step step = steps.apply(x);
            double by = step.by();
            boolean last = Math.abs(by) < UNSEEN || Math.abs(step.missing) < CLOSE && Math.abs(by) < CLOSE * (1 - x);
            double next = x * Math.exp(by);
            x = next < 1 ? next : (x + 1) / 2;
            if (last) {
                return x;
            }
        }
        throw new ArithmeticException("a quantile did not settle from " + start);
    }

    /** The approximation 26.5.22 of Abramowitz and Stegun; for small parameters the leading power. */
    private double startLower(double tail) {
        double y = -Normal.quantile(tail);
        double k = (y * y - 3) / 6;
        double p = 1 / (2 * a - 1);
        double q = 1 / (2 * b - 1);
        double h = 2 / (p + q);
        double w = y * Math.sqrt(h + k) / h - (q - p) * (k + 5 / 6d - 2 / (3 * h));
        double x = a / (a + b * Math.exp(2 * w));
        return x > 0 && x < 1 ? x : Math.min(0.5, Math.pow(tail, 1 / a));
    }
}

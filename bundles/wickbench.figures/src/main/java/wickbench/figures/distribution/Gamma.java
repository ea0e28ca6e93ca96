package wickbench.figures.distribution;

/**
 * The gamma distribution of unit scale, whose tails are the Poisson's (regularised incomplete gamma function).
 *
 * <p>The smaller tail comes from the series or the continued fraction (DLMF 8.7.1, 8.9.2), the larger one as its complement.
 */
final class Gamma {
    private static final double EPSILON = 0x1p-53;
    private static final double TINY = 1e-300;
    private static final int MOST_STEPS = 1_000_000;

    private Gamma() {}

    /**
     * Both tails.
     *
     * @param lower P(X ≤ x)
     * @param upper P(X &gt; x)
     */
    record Tails(double lower, double upper) {}

    /**
     * @param shape a multiple of ½ up to 15, or any number above 15
     * @param x above 0
     */
    static Tails at(double shape, double x) {
        Mass front = Mass.poisson(shape, x);
        if (x < shape + 1) {
            double lower = front.times(series(shape, x)).value();
            return new Tails(lower, 1 - lower);
        }
        double upper = front.times(shape * fraction(shape, x)).value();
        return new Tails(1 - upper, upper);
    }

    private static double series(double shape, double x) {
        double sum = 1;
        double term = 1;
        for (double a = shape + 1; term > sum * EPSILON / 2; a++) {
            term *= x / a;
            sum += term;
        }
        return sum;
    }

    private static double fraction(double shape, double x) {
        double b = x + 1 - shape;
        double c = 1 / TINY;
        double d = 1 / b;
        double value = d;
        for (int i = 1; i < MOST_STEPS; i++) {
            double an = -i * (i - shape);
            b += 2;
            d = 1 / guarded(an * d + b);
            c = guarded(b + an / c);
            double step = d * c;
            value *= step;
            if (Math.abs(step - 1) <= EPSILON) {
                return value;
            }
        }
        throw new ArithmeticException("the continued fraction did not settle: " + shape + " " + x);
    }

    private static double guarded(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }
}

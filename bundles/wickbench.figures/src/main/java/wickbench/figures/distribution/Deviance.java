package wickbench.figures.distribution;

/**
 * x ln(x/m) + m − x, the exponent in Loader's saddle-point form of binomial and Poisson probabilities.
 *
 * <p>Computed from the distance x − m, which the caller knows without rounding. Where it is large, and would as a plain double cost
 * digits of its exponential, it is kept as two doubles.
 */
final class Deviance {
    /** Series in v converge quickly below this. */
    private static final double NEAR = 0.1;

    /** Above this a rounded exponent would cost more than half a digit. */
    private static final double LARGE = 4;

    private Deviance() {}

    /**
     * @param x above 0
     * @param mean the mean m, above 0
     * @param distance x − m
     */
    static Twin of(double x, Twin mean, Twin distance) {
        double far = distance.high() / (x + mean.high());
        if (Math.abs(far) < NEAR && distance.high() * far < LARGE) {
            return Twin.of(near(x, distance.high(), far));
        }
        double logs = x * Math.log(x / mean.high());
        if (Math.abs(logs) < LARGE && Math.abs(distance.high()) < LARGE) {
            return Twin.of(logs - distance.high());
        }
        return Twin.of(x).over(mean).log().times(x).minus(distance);
    }

    private static double near(double x, double distance, double v) {
        double sum = distance * v;
        double term = 2 * x * v;
        double square = v * v;
        for (int i = 3; ; i += 2) {
            term *= square;
            double next = sum + term / i;
            if (next == sum) {
                return next;
            }
            sum = next;
        }
    }
}

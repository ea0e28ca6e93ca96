package wickbench.figures.distribution;

/**
 * Probabilities of single values in Loader's saddle-point form, for real arguments too.
 *
 * @param log the logarithm, as two doubles
 * @param factor what the exponential of it is still multiplied with
 */
record Mass(Twin log, double factor) {
    private static final double TWO_PI = 2 * Math.PI;

    /**
     * The binomial x of n with probability p.
     *
     * @param q 1 − p, exactly, as two doubles
     */
    static Mass binomial(double x, double n, double p, Twin q) {
        if (x == 0) {
            return new Mass(q.log().times(n), 1);
        }
        if (x == n) {
            return new Mass(Twin.of(p).log().times(n), 1);
        }
        Twin mean = Twin.product(n, p);
        Twin distance = Twin.of(x).minus(mean);
        Twin otherMean = q.times(n);
        double rests = Stirling.rest(n) - Stirling.rest(x) - Stirling.rest(n - x);
        Twin log = Twin.of(rests)
                .minus(Deviance.of(x, mean, distance))
                .minus(Deviance.of(n - x, otherMean, new Twin(-distance.high(), -distance.low())));
        return new Mass(log, Math.sqrt(n / (TWO_PI * x * (n - x))));
    }

    /** The Poisson count x at this mean. */
    static Mass poisson(double x, double mean) {
        if (x == 0) {
            return new Mass(Twin.of(-mean), 1);
        }
        Twin distance = Twin.sum(x, -mean);
        Twin log = Twin.of(-Stirling.rest(x)).minus(Deviance.of(x, Twin.of(mean), distance));
        return new Mass(log, 1 / Math.sqrt(TWO_PI * x));
    }

    Mass times(double more) {
        return new Mass(log, factor * more);
    }

    double value() {
        return Math.exp(log.high()) * (1 + log.low()) * factor;
    }

    double logValue() {
        return log.high() + Math.log(factor);
    }
}

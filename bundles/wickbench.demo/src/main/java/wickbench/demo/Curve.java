package wickbench.demo;

/**
 * A probability that rises with the load, along a logistic curve over the logarithm of the amount.
 *
 * @param half the load, in tenfolds, at which the probability is one half
 * @param slope how steeply it rises there, in log-odds per tenfold
 */
record Curve(double half, double slope) {
    private static final double ODDS_AT_LIMIT = 0.95 / 0.05;

    /** Returns the curve of a strip that finds its limit in 95 of 100 tries. */
    static Curve detecting(double slope) {
        return new Curve(-StrictMath.log(ODDS_AT_LIMIT) / slope, slope);
    }

    double at(Load load) {
        return 1 / (1 + StrictMath.exp(-slope * (load.tenfolds() - half)));
    }
}

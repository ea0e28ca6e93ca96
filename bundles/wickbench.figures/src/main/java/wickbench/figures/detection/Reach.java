package wickbench.figures.detection;

/**
 * Where a fitted line reaches a value, on the scale of the fit.
 *
 * @param x the place
 * @param se its standard error by the delta method
 */
record Reach(double x, double se) {

    /**
     * @param intercept which coefficient is the intercept
     * @param slope which is the slope; the same as the intercept where the slope is fixed at 1
     * @param eta the value to reach
     */
    static Reach of(Regression.Fit fit, int intercept, int slope, double eta) {
        double a = fit.coefficients()[intercept];
        double[][] covariance = fit.covariance();
        if (slope == intercept) {
            return new Reach(eta - a, Math.sqrt(covariance[intercept][intercept]));
        }
        double b = fit.coefficients()[slope];
        double x = (eta - a) / b;
        double variance = covariance[intercept][intercept]
                + 2 * x * covariance[intercept][slope]
                + x * x * covariance[slope][slope];
        return new Reach(x, Math.sqrt(variance) / Math.abs(b));
    }
}

package wickbench.figures.detection;

import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Normal;

/**
 * How the limits of detection of two methods compare, both fitted with one slope (Mărgăritescu and Wilrich, J. AOAC Int. 96:1086,
 * 2013).
 *
 * @param ratio limit of the alternative divided by that of the reference, the same at every probability; above 1 the alternative is
 *     the less sensitive
 * @param z ln ratio divided by its standard error
 * @param p two-sided p-value that the limits are alike
 */
public record RelativeLimit(Limits ratio, double z, double p) {

    /**
     * Compares two studies on a logarithm of the level.
     *
     * @param level confidence of the limits
     */
    public static RelativeLimit of(Levels alternative, Levels reference, Link link, Dose dose, double level) {
        Inputs.level("level", level);
        boolean oneHit = link == Link.ONE_HIT;
        Dose scale = oneHit ? Dose.LN : dose;
        if (!scale.isLogarithm()) {
            throw NoAnswer.of("", "detection.ratio-needs-logarithm");
        }
        Levels first = alternative.fitted(scale);
        Levels second = reference.fitted(scale);
        first.checkOverlap(false);
        second.checkOverlap(false);
        Regression.Fit fit = together(first, second, link, scale).fit();
        return oneHit ? of(fit, scale, 1, 0, level) : of(fit, scale, fit.coefficients()[2], 2, level);
    }

    private static Regression together(Levels first, Levels second, Link link, Dose scale) {
        boolean oneHit = link == Link.ONE_HIT;
        int split = first.levels().length;
        double[] x = DoubleStream.concat(DoubleStream.of(first.levels()), DoubleStream.of(second.levels()))
                .map(scale::of)
                .toArray();
        double[][] design = new double[x.length][];
        for (int i = 0; i < x.length; i++) {
            double one = i < split ? 1 : 0;
            design[i] = oneHit ? new double[] {one, 1 - one} : new double[] {one, 1 - one, x[i]};
        }
        return new Regression(
                link,
                design,
                oneHit ? x : new double[x.length],
                LongStream.concat(LongStream.of(first.tests()), LongStream.of(second.tests()))
                        .toArray(),
                LongStream.concat(LongStream.of(first.positives()), LongStream.of(second.positives()))
                        .toArray());
    }

    /** x_alternative − x_reference = (a_reference − a_alternative)/b, its variance by the delta method. */
    private static RelativeLimit of(Regression.Fit fit, Dose scale, double slope, int slopeAt, double level) {
        double[][] v = fit.covariance();
        double apart = (fit.coefficients()[1] - fit.coefficients()[0]) / slope;
        double variance = v[0][0] + v[1][1] - 2 * v[0][1];
        if (slopeAt > 0) {
            variance += 2 * apart * (v[0][slopeAt] - v[1][slopeAt]) + apart * apart * v[slopeAt][slopeAt];
        }
        double se = Math.sqrt(variance) / slope;
        double z = apart / se;
        return new RelativeLimit(
                Detection.limits(scale, new Reach(apart, se), level), z, 2 * Normal.above(Math.abs(z)));
    }
}

package wickbench.figures.detection;

import java.util.Arrays;
import java.util.OptionalDouble;
import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.ChiSquared;
import wickbench.figures.distribution.Normal;

/**
 * Fits curves of detection.
 *
 * <p>The one-hit and complementary log-log forms: Wilrich and Wilrich, J. AOAC Int. 92:1763 (2009). Probit: Finney, Probit Analysis
 * (1971); CLSI EP17-A2 (2012). For counted particles the one-hit form has a physical reason; for dissolved protein fit probit or
 * logit on log dose, or leave the slope free.
 */
public final class Detection {
    private Detection() {}

    /**
     * Fits a curve by maximum likelihood.
     *
     * @param study levels, tests, positives; blanks stay out
     * @param dose the scale; the one-hit form takes {@link Dose#LN} whatever is asked, being linear in the level itself
     * @param level confidence of the limits
     * @throws NoAnswer when no curve can be told: all or none positive, one level, positives separated from negatives, detection
     *     falling with the level
     */
    public static DetectionCurve fit(Levels study, Link link, Dose dose, double level) {
        Inputs.level("level", level);
        boolean oneHit = link == Link.ONE_HIT;
        Dose scale = oneHit ? Dose.LN : dose;
        Levels used = study.fitted(scale);
        used.checkOverlap(!oneHit);
        double[] x = Arrays.stream(used.levels()).map(scale::of).toArray();
        Regression.Fit fit = new Regression(
                        link,
                        Arrays.stream(x)
                                .mapToObj(each -> oneHit ? new double[] {1} : new double[] {1, each})
                                .toArray(double[][]::new),
                        oneHit ? x : new double[x.length],
                        used.tests(),
                        used.positives())
                .fit();
        if (!oneHit && !(fit.coefficients()[1] > 0)) {
            throw NoAnswer.of("", "detection.falls");
        }
        return curve(link, scale, fit, level);
    }

    private static DetectionCurve curve(Link link, Dose scale, Regression.Fit fit, double level) {
        double[] se = new double[fit.coefficients().length];
        Arrays.setAll(se, fit::se);
        OptionalDouble misfit = fit.df() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(ChiSquared.above(Math.max(0, fit.deviance()), fit.df()));
        return new DetectionCurve(
                link,
                scale,
                fit.coefficients(),
                se,
                limits(scale, Reach.of(fit, 0, fit.coefficients().length - 1, link.eta(0.5)), level),
                limits(scale, Reach.of(fit, 0, fit.coefficients().length - 1, link.eta(0.95)), level),
                fit.deviance(),
                fit.df(),
                misfit);
    }

    /** Limits on the scale of the fit, brought back to the level. */
    static Limits limits(Dose scale, Reach reach, double level) {
        double half = Normal.twoSided(level) * reach.se();
        return new Limits(scale.back(reach.x()), scale.back(reach.x() - half), scale.back(reach.x() + half));
    }
}

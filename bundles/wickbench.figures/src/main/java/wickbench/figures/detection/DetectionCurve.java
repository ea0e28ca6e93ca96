package wickbench.figures.detection;

import java.util.OptionalDouble;
import wickbench.figures.Limits;

/**
 * A fitted curve of detection.
 *
 * @param link its form
 * @param dose the scale of the level
 * @param coefficients intercept and slope; ln a alone for the one-hit form
 * @param se their standard errors, from the expected information
 * @param lod50 the level detected half of the time, with limits by the delta method on the scale of the fit
 * @param lod95 the level detected 95 % of the time
 * @param deviance the residual deviance
 * @param df its degrees of freedom
 * @param misfit p-value of the deviance as chi-squared; absent without degrees of freedom
 */
public record DetectionCurve(
        Link link,
        Dose dose,
        double[] coefficients,
        double[] se,
        Limits lod50,
        Limits lod95,
        double deviance,
        int df,
        OptionalDouble misfit) {
    /** The curve is flagged as not fitting below this p-value. */
    public static final double MISFIT = 0.05;

    /** Tells whether the deviance says that this is not the form of the data. */
    public boolean isFlagged() {
        return misfit.isPresent() && misfit.getAsDouble() < MISFIT;
    }

    /** Returns the fitted probability of detection at a level. */
    public double at(double level) {
        double x = dose.of(level);
        return link.at(coefficients[0] + (coefficients.length == 1 ? x : coefficients[1] * x))
                .p();
    }
}

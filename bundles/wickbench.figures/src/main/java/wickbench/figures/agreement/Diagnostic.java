package wickbench.figures.agreement;

import java.util.OptionalDouble;
import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.proportion.Interval;

/**
 * How a method compares with a reference that is right.
 *
 * @param sensitivity tp/(tp+fn) with score limits
 * @param specificity tn/(tn+fp) with score limits
 * @param youden J = Se + Sp − 1 (Youden, Cancer 3:32, 1950)
 * @param youdenSe √(tp·fn/(tp+fn)³ + fp·tn/(fp+tn)³)
 * @param positiveRatio LR+ = Se/(1−Sp); absent where it has no end
 * @param negativeRatio LR− = (1−Se)/Sp; absent where Sp is 0
 * @param oddsRatio LR+/LR−; absent where it has no end
 */
public record Diagnostic(
        Limits sensitivity,
        Limits specificity,
        double youden,
        double youdenSe,
        OptionalDouble positiveRatio,
        OptionalDouble negativeRatio,
        OptionalDouble oddsRatio) {

    /** Of all that carry the target at least one was tested, and at least one without. */
    public static Diagnostic of(long tp, long fn, long fp, long tn, double level) {
        Inputs.count("TP", tp);
        Inputs.count("FN", fn);
        Inputs.count("FP", fp);
        Inputs.count("TN", tn);
        Inputs.size("TP + FN", tp + fn);
        Inputs.size("FP + TN", fp + tn);
        Limits sensitivity = Interval.WILSON.of(tp, tp + fn, level);
        Limits specificity = Interval.WILSON.of(tn, fp + tn, level);
        double se = sensitivity.estimate();
        double sp = specificity.estimate();
        double variance = (double) tp * fn / Math.pow(tp + fn, 3) + (double) fp * tn / Math.pow(fp + tn, 3);
        return new Diagnostic(
                sensitivity,
                specificity,
                se + sp - 1,
                Math.sqrt(variance),
                ratio(se, (double) fp / (fp + tn)),
                ratio((double) fn / (tp + fn), sp),
                ratio((double) tp * tn, (double) fn * fp));
    }

    private static OptionalDouble ratio(double over, double under) {
        return under == 0 ? OptionalDouble.empty() : OptionalDouble.of(over / under);
    }

    /**
     * Returns the chance that a positive is right, Se·π/(Se·π + (1−Sp)(1−π)); absent where nothing would be positive.
     *
     * @param prevalence how much of what is tested carries the target, from 0 to 1
     */
    public static OptionalDouble positiveValue(double sensitivity, double specificity, double prevalence) {
        check(sensitivity, specificity, prevalence);
        double right = sensitivity * prevalence;
        return ratio(right, right + (1 - specificity) * (1 - prevalence));
    }

    /** Returns the chance that a negative is right, Sp(1−π)/(Sp(1−π) + (1−Se)π). */
    public static OptionalDouble negativeValue(double sensitivity, double specificity, double prevalence) {
        check(sensitivity, specificity, prevalence);
        double right = specificity * (1 - prevalence);
        return ratio(right, right + (1 - sensitivity) * prevalence);
    }

    private static void check(double sensitivity, double specificity, double prevalence) {
        Inputs.probability("sensitivity", sensitivity);
        Inputs.probability("specificity", specificity);
        Inputs.probability("prevalence", prevalence);
    }
}

package wickbench.figures.detection;

import java.util.Arrays;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Normal;

/**
 * The limits of blank and of detection of a method that gives a number (CLSI EP17-A2, 2012).
 *
 * <p>The limit of blank is what 95 % of blank results stay below; the limit of detection the amount of which 95 % of results lie
 * above the limit of blank. All in the unit of the results.
 */
public final class LimitOfBlank {
    /** The 95th percentile of the normal distribution as the guideline prints it. */
    private static final double PRINTED = 1.645;

    private static final double SHARE = 0.95;

    private LimitOfBlank() {}

    /**
     * What the parametric limit rests on.
     *
     * @param mean of all results
     * @param sd their standard deviation
     * @param factor c = z/(1 − 1/(4(B − K))), z the 95th percentile in full (the guideline rounds it to 1.645), B results of K samples
     * @param limit mean + factor × sd
     * @param plain mean + 1.645 × sd, without the correction for few results
     */
    public record Parametric(double mean, double sd, double factor, double limit, double plain) {}

    /**
     * Returns the parametric limit of blank.
     *
     * @param blanks results, more than there are samples
     * @param samples from how many blank samples they come
     */
    public static Parametric parametric(double[] blanks, int samples) {
        Spread spread = Spread.of(blanks, samples);
        double factor = factor(spread.freedom());
        return new Parametric(
                spread.mean(),
                spread.sd(),
                factor,
                spread.mean() + factor * spread.sd(),
                spread.mean() + PRINTED * spread.sd());
    }

    /** Returns the limit of blank by rank: the value at rank 0.5 + 0.95·B, between two ranks by interpolation. */
    public static double byRank(double[] blanks) {
        double[] sorted = checked(blanks);
        Arrays.sort(sorted);
        double rank = 0.5 + SHARE * sorted.length;
        if (rank > sorted.length) {
            throw NoAnswer.of("", "blank.too-few-for-rank", sorted.length);
        }
        int below = (int) Math.floor(rank);
        double low = sorted[below - 1];
        return below == sorted.length ? low : low + (rank - below) * (sorted[below] - low);
    }

    /**
     * Returns the limit of detection, limit of blank + c·SD of the low samples.
     *
     * @param low results near the limit, more than there are samples
     * @param samples from how many low samples they come
     */
    public static Parametric detection(double limitOfBlank, double[] low, int samples) {
        Inputs.finite("limit of blank", limitOfBlank);
        Spread spread = Spread.of(low, samples);
        double factor = factor(spread.freedom());
        return new Parametric(
                spread.mean(),
                spread.sd(),
                factor,
                limitOfBlank + factor * spread.sd(),
                limitOfBlank + PRINTED * spread.sd());
    }

    private static double factor(int freedom) {
        return Normal.quantile(SHARE) / (1 - 1 / (4d * freedom));
    }

    private static double[] checked(double[] values) {
        if (values.length == 0) {
            throw NoAnswer.of("", "blank.none");
        }
        double[] copy = values.clone();
        for (int i = 0; i < copy.length; i++) {
            if (!Double.isFinite(copy[i])) {
                throw NoAnswer.of("value", "number.expected", copy[i]).inRow(i);
            }
        }
        return copy;
    }

    private record Spread(double mean, double sd, int freedom) {
        static Spread of(double[] values, int samples) {
            checked(values);
            Inputs.size("samples", samples);
            if (values.length <= samples) {
                throw NoAnswer.of("", "blank.too-few", values.length, samples);
            }
            double mean = Arrays.stream(values).average().orElseThrow();
            double squares = Arrays.stream(values)
                    .map(each -> (each - mean) * (each - mean))
                    .sum();
            return new Spread(mean, Math.sqrt(squares / (values.length - 1)), values.length - samples);
        }
    }
}

package wickbench.figures.proportion;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.ChiSquared;
import wickbench.figures.distribution.StudentT;
import wickbench.figures.proportion.Laboratories.Homogeneity;

/**
 * An inter-laboratory study of a binary method at one level.
 *
 * <p>AOAC Official Methods of Analysis, Appendix J (2012), Annex F; Wehling, LaBudde, Brunelle and Nelson, J. AOAC Int. 94:335
 * (2011). Where laboratories tested unlike numbers, n in s_L² is the usual mean (N − Σn²/N)/(L−1) of an analysis of variance.
 */
public final class LaboratoryStudy {
    /** Outside, the proportions of the laboratories are too skewed for Student's t. */
    private static final double SKEWED = 0.15;

    private LaboratoryStudy() {}

    /**
     * @param positives positives of each laboratory
     * @param tests tests of each; at least two laboratories, and one with two tests
     * @param level confidence, between 0 and 1
     */
    public static Laboratories of(long[] positives, long[] tests, double level) {
        Inputs.level("level", level);
        if (positives.length != tests.length || positives.length < 2) {
            throw NoAnswer.of("", "laboratories.two", positives.length);
        }
        for (int i = 0; i < tests.length; i++) {
            check(positives[i], tests[i], i);
        }
        return computed(positives, tests, level);
    }

    private static void check(long positives, long tests, int row) {
        try {
            Inputs.size("tests", tests);
            Inputs.part("positives", positives, "tests", tests);
        } catch (NoAnswer none) {
            throw none.inRow(row);
        }
    }

    private static Laboratories computed(long[] positives, long[] tests, double level) {
        int laboratories = tests.length;
        long x = Arrays.stream(positives).sum();
        long n = Arrays.stream(tests).sum();
        if (n == laboratories) {
            throw NoAnswer.of("", "laboratories.no-repeats");
        }
        double within = over(positives, tests, (p, t) -> p - p * p / t) / (n - laboratories);
        double mean = over(positives, tests, (p, t) -> p / t) / laboratories;
        double spread = over(positives, tests, (p, t) -> (p / t - mean) * (p / t - mean)) / (laboratories - 1);
        double size = (n - over(positives, tests, (p, t) -> t * t) / n) / (laboratories - 1);
        double between = Math.max(0, spread - within / size);
        double lpod = (double) x / n;
        boolean byLaboratories = lpod >= SKEWED && lpod <= 1 - SKEWED;
        Limits limits = byLaboratories ? student(lpod, spread, laboratories, level) : Interval.WILSON.of(x, n, level);
        return new Laboratories(
                limits, byLaboratories, within, between, within + between, spread, homogeneity(positives, tests, lpod));
    }

    private static Limits student(double lpod, double spread, int laboratories, double level) {
        double half = new StudentT(laboratories - 1).upperQuantile((1 - level) / 2) * Math.sqrt(spread / laboratories);
        return new Limits(lpod, Math.max(0, lpod - half), Math.min(1, lpod + half));
    }

    private static Optional<Homogeneity> homogeneity(long[] positives, long[] tests, double lpod) {
        if (lpod == 0 || lpod == 1) {
            return Optional.empty();
        }
        double statistic = over(positives, tests, (p, t) -> (p - t * lpod) * (p - t * lpod) / (t * lpod * (1 - lpod)));
        long df = tests.length - 1L;
        return Optional.of(new Homogeneity(statistic, df, ChiSquared.above(statistic, df)));
    }

    private static double over(long[] positives, long[] tests, Summand of) {
        return IntStream.range(0, tests.length)
                .mapToDouble(i -> of.at(positives[i], tests[i]))
                .sum();
    }

    private interface Summand {
        double at(double positives, double tests);
    }
}

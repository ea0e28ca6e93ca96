package wickbench.figures.seeing;

import java.util.Arrays;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Binomial;
import wickbench.figures.distribution.Normal;

/**
 * Fits psychometric curves by maximum likelihood, by Fisher scoring in (−μ/σ, 1/σ, γ, λ).
 *
 * <p>γ and λ are kept from 0 to a cap; without a cap a reader who is merely unsure would be told to be inattentive.
 */
public final class PsychometricFit {
    /** The cap of Wichmann and Hill for lapses. */
    public static final double USUAL_CAP = 0.06;

    private static final int MOST_STEPS = 2000;
    private static final double STILL = 1e-12;

    private final double[] levels;
    private final long[] tests;
    private final long[] yes;
    private final double cap;

    private PsychometricFit(double[] levels, long[] tests, long[] yes, double cap) {
        this.levels = levels;
        this.tests = tests;
        this.yes = yes;
        this.cap = cap;
    }

    /**
     * Fits a curve.
     *
     * @param levels what was shown
     * @param tests how often
     * @param yes how often it was seen
     * @param cap the most that γ and λ may be, from 0 (neither is fitted) to below ½
     */
    public static Psychometric of(double[] levels, long[] tests, long[] yes, double cap) {
        if (!(cap >= 0 && cap < 0.5)) {
            throw NoAnswer.of("cap", "seeing.cap", cap);
        }
        check(levels, tests, yes);
        return new PsychometricFit(levels, tests, yes, cap).fit();
    }

    private static void check(double[] levels, long[] tests, long[] yes) {
        double firstYes = Double.POSITIVE_INFINITY;
        double lastNo = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < levels.length; i++) {
            try {
                Inputs.finite("level", levels[i]);
                Inputs.size("tests", tests[i]);
                Inputs.part("yes", yes[i], "tests", tests[i]);
            } catch (NoAnswer none) {
                throw none.inRow(i);
            }
            firstYes = yes[i] > 0 ? Math.min(firstYes, levels[i]) : firstYes;
            lastNo = yes[i] < tests[i] ? Math.max(lastNo, levels[i]) : lastNo;
        }
        if (lastNo <= firstYes) {
            throw NoAnswer.of("", "seeing.separated");
        }
    }

    private Psychometric fit() {
        double[] at = start();
        double likelihood = likelihood(at);
        for (int i = 0; i < MOST_STEPS; i++) {
            double[] step = step(at);
            double part = 1;
            double[] next = moved(at, step, part);
            double then = likelihood(next);
            while (!(then >= likelihood) && part > 1e-10) {
                part /= 2;
                next = moved(at, step, part);
                then = likelihood(next);
            }
            double size = distance(at, next);
            if (then >= likelihood) {
                at = next;
                likelihood = then;
            }
            if (size < STILL || part <= 1e-10) {
                return result(at);
            }
        }
        throw NoAnswer.of("", "seeing.unsettled");
    }

    private Psychometric result(double[] at) {
        if (!(at[1] > 0)) {
            throw NoAnswer.of("", "seeing.falls");
        }
        return new Psychometric(-at[0] / at[1], 1 / at[1], at[2], at[3], minusLog(at));
    }

    /** The middle of the levels, a fifth of their range, and a little guessing. */
    private double[] start() {
        double low = Arrays.stream(levels).min().orElseThrow();
        double high = Arrays.stream(levels).max().orElseThrow();
        double spread = (high - low) / 5;
        double little = Math.min(cap / 2, 0.01);
        return new double[] {-(low + high) / 2 / spread, 1 / spread, little, little};
    }

    private double[] step(double[] at) {
        double[][] information = new double[4][4];
        double[] score = new double[4];
        for (int i = 0; i < levels.length; i++) {
            double eta = at[0] + at[1] * levels[i];
            double p = chance(at, i);
            double bell = (1 - at[2] - at[3]) * Normal.density(eta);
            double[] slope = {bell, bell * levels[i], Normal.above(eta), -Normal.below(eta)};
            for (int j = 0; j < 4; j++) {
                score[j] += slope[j] * (yes[i] - tests[i] * p) / (p * (1 - p));
                for (int k = 0; k < 4; k++) {
                    information[j][k] += slope[j] * slope[k] * tests[i] / (p * (1 - p));
                }
            }
        }
        hold(at, information, score);
        try {
            return new CholeskyDecomposition(new Array2DRowRealMatrix(information, false), 1e-9, 1e-300)
                    .getSolver()
                    .solve(new ArrayRealVector(score, false))
                    .toArray();
        } catch (MathRuntimeException singular) {
            throw NoAnswer.of("", "seeing.unsettled");
        }
    }

    /** A rate that stands at an end and would go beyond stays there. */
    private void hold(double[] at, double[][] information, double[] score) {
        for (int j = 2; j < 4; j++) {
            if (cap == 0 || at[j] <= 0 && score[j] < 0 || at[j] >= cap && score[j] > 0) {
                for (int k = 0; k < 4; k++) {
                    information[j][k] = 0;
                    information[k][j] = 0;
                }
                information[j][j] = 1;
                score[j] = 0;
            }
        }
    }

    private double[] moved(double[] at, double[] step, double part) {
        double[] next = new double[4];
        for (int j = 0; j < 4; j++) {
            next[j] = at[j] + part * step[j];
        }
        next[2] = Math.min(cap, Math.max(0, next[2]));
        next[3] = Math.min(cap, Math.max(0, next[3]));
        return next;
    }

    private static double distance(double[] from, double[] to) {
        double largest = 0;
        for (int j = 0; j < from.length; j++) {
            largest = Math.max(largest, Math.abs(from[j] - to[j]));
        }
        return largest;
    }

    private double chance(double[] at, int i) {
        return at[2] + (1 - at[2] - at[3]) * Normal.below(at[0] + at[1] * levels[i]);
    }

    /** −ln of the chance of exactly these answers. */
    private double minusLog(double[] at) {
        double sum = 0;
        for (int i = 0; i < levels.length; i++) {
            sum -= Math.log(new Binomial(tests[i], chance(at, i)).mass(yes[i]));
        }
        return sum;
    }

    private double likelihood(double[] at) {
        double sum = 0;
        for (int i = 0; i < levels.length; i++) {
            double eta = at[0] + at[1] * levels[i];
            double no = at[3] + (1 - at[2] - at[3]) * Normal.above(eta);
            sum += yes[i] == 0 ? 0 : yes[i] * Math.log(chance(at, i));
            sum += yes[i] == tests[i] ? 0 : (tests[i] - yes[i]) * Math.log(no);
        }
        return sum;
    }
}

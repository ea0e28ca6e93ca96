package wickbench.figures.detection;

import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import wickbench.figures.NoAnswer;

/**
 * A binomial regression by iteratively reweighted least squares, that is Fisher scoring (McCullagh and Nelder, Generalized Linear
 * Models, 2nd ed. 1989, 2.5), carried on until the coefficients stand still.
 */
final class Regression {
    private static final int MOST_STEPS = 200;
    private static final double STILL = 1e-14;

    /** Below this a step that no longer shrinks is rounding. */
    private static final double NOISE = 1e-8;

    private final Link link;
    private final double[][] design;
    private final double[] offset;
    private final long[] tests;
    private final long[] positives;
    private final int width;

    /** Each row of the design holds the predictors of one group of tests. */
    Regression(Link link, double[][] design, double[] offset, long[] tests, long[] positives) {
        this.link = link;
        this.design = design;
        this.offset = offset;
        this.tests = tests;
        this.positives = positives;
        this.width = design[0].length;
    }

    /**
     * What came out.
     *
     * @param coefficients one a column of the design
     * @param covariance of the coefficients, the inverse of the expected information
     * @param deviance twice the log-likelihood that the saturated model has more
     * @param df groups less coefficients
     */
    record Fit(double[] coefficients, double[][] covariance, double deviance, int df) {
        double se(int i) {
            return Math.sqrt(covariance[i][i]);
        }
    }

    Fit fit() {
        double[] beta = start();
        double deviance = deviance(beta);
        double last = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_STEPS; i++) {
            Sums sums = sums(beta);
            double[] step = solver(sums.information)
                    .getSolver()
                    .solve(new ArrayRealVector(sums.score, false))
                    .toArray();
            double[] next = plus(beta, step, 1);
            double then = deviance(next);
            // a full step may overshoot far from the maximum; half of it is tried until the fit is no worse
            for (double part = 0.5; !(then <= deviance + 1e-8) && part > 1e-6; part /= 2) {
                next = plus(beta, step, part);
                then = deviance(next);
            }
            double size = size(step, next);
            beta = next;
            deviance = then;
            if (size <= STILL || size < NOISE && size >= last) {
                return result(beta);
            }
            last = size;
        }
        throw NoAnswer.of("", "detection.unsettled");
    }

    private Fit result(double[] beta) {
        RealMatrix inverse = solver(sums(beta).information).getSolver().getInverse();
        return new Fit(beta, inverse.getData(), deviance(beta), tests.length - width);
    }

    /** What one step needs. */
    private static final class Sums {
        private final double[][] information;
        private final double[] score;

        private Sums(int width) {
            information = new double[width][width];
            score = new double[width];
        }

        private void add(double[] row, double weight, double gain) {
            for (int j = 0; j < row.length; j++) {
                score[j] += row[j] * gain;
                for (int k = 0; k < row.length; k++) {
                    information[j][k] += row[j] * row[k] * weight;
                }
            }
        }
    }

    private Sums sums(double[] beta) {
        Sums sums = new Sums(width);
        for (int i = 0; i < tests.length; i++) {
            Link.Chance chance = link.at(eta(beta, i));
            double weight = tests[i] * chance.score() * chance.score() * chance.p() * chance.q();
            // positives × q − negatives × p is positives − tests × p without its cancellation
            double more = positives[i] * chance.q() - (tests[i] - positives[i]) * chance.p();
            sums.add(design[i], weight, more * chance.score());
        }
        return sums;
    }

    /** Least squares on the observed proportions, moved a little away from 0 and 1. */
    private double[] start() {
        Sums sums = new Sums(width);
        for (int i = 0; i < tests.length; i++) {
            double p = (positives[i] + 0.5) / (tests[i] + 1d);
            double eta = link.eta(p);
            Link.Chance chance = link.at(eta);
            double weight = tests[i] * chance.score() * chance.score() * chance.p() * chance.q();
            sums.add(design[i], weight, weight * (eta - offset[i]));
        }
        return solver(sums.information)
                .getSolver()
                .solve(new ArrayRealVector(sums.score, false))
                .toArray();
    }

    private static CholeskyDecomposition solver(double[][] information) {
        try {
            return new CholeskyDecomposition(new Array2DRowRealMatrix(information, false), 1e-9, 1e-300);
        } catch (MathRuntimeException singular) {
            throw NoAnswer.of("", "detection.unsettled");
        }
    }

    private double deviance(double[] beta) {
        double sum = 0;
        for (int i = 0; i < tests.length; i++) {
            Link.Chance chance = link.at(eta(beta, i));
            long y = positives[i];
            long rest = tests[i] - y;
            sum += y == 0 ? 0 : y * (Math.log((double) y / tests[i]) - chance.logP());
            sum += rest == 0 ? 0 : rest * (Math.log((double) rest / tests[i]) - chance.logQ());
        }
        return 2 * sum;
    }

    private double eta(double[] beta, int i) {
        double sum = offset[i];
        for (int j = 0; j < width; j++) {
            sum += design[i][j] * beta[j];
        }
        return sum;
    }

    private static double[] plus(double[] beta, double[] step, double part) {
        double[] sum = beta.clone();
        for (int j = 0; j < sum.length; j++) {
            sum[j] += part * step[j];
        }
        return sum;
    }

    /** The largest step, relative to its coefficient. */
    private static double size(double[] step, double[] beta) {
        double largest = 0;
        for (int j = 0; j < beta.length; j++) {
            largest = Math.max(largest, Math.abs(step[j]) / (Math.abs(beta[j]) + STILL));
        }
        return largest;
    }
}

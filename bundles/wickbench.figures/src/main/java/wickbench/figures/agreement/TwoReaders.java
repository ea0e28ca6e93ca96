package wickbench.figures.agreement;

import java.util.Arrays;
import wickbench.figures.Inputs;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Normal;

/** The table of two readers who judged the same items: rows the first reader's answers, columns the second's. */
public final class TwoReaders {
    private final double[][] p;
    private final double[] rows;
    private final double[] columns;
    private final double n;

    private TwoReaders(double[][] p, double n) {
        this.p = p;
        this.n = n;
        rows = new double[p.length];
        columns = new double[p.length];
        for (int i = 0; i < p.length; i++) {
            for (int j = 0; j < p.length; j++) {
                rows[i] += p[i][j];
                columns[j] += p[i][j];
            }
        }
    }

    /**
     * Takes the counts.
     *
     * @throws NoAnswer when the table is not square, has one category only, or holds nothing
     */
    public static TwoReaders of(long[][] counts) {
        if (counts.length < 2) {
            throw NoAnswer.of("", "agreement.two-categories", counts.length);
        }
        double n = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i].length != counts.length) {
                throw NoAnswer.of("", "agreement.square", counts[i].length, counts.length)
                        .inRow(i);
            }
            n += rowSum(counts[i], i);
        }
        if (n == 0) {
            throw NoAnswer.of("", "table.all-zero");
        }
        double total = n;
        double[][] shares = Arrays.stream(counts)
                .map(row -> Arrays.stream(row).mapToDouble(each -> each / total).toArray())
                .toArray(double[][]::new);
        return new TwoReaders(shares, n);
    }

    private static double rowSum(long[] row, int at) {
        double sum = 0;
        for (long each : row) {
            try {
                sum += Inputs.count("count", each);
            } catch (NoAnswer none) {
                throw none.inRow(at);
            }
        }
        return sum;
    }

    /**
     * Computes kappa with all that belongs to it.
     *
     * @param weights as many categories as the table
     * @param level confidence of the limits
     */
    public Kappa kappa(Weights weights, double level) {
        if (weights.categories() != p.length) {
            throw NoAnswer.of("weights", "agreement.square", weights.categories(), p.length);
        }
        double z = Normal.twoSided(level);
        double po = sum((i, j) -> p[i][j] * weights.at(i, j));
        double pe = sum((i, j) -> rows[i] * columns[j] * weights.at(i, j));
        if (1 - pe < 1e-15) {
            throw NoAnswer.of("", "agreement.one-category");
        }
        double kappa = (po - pe) / (1 - pe);
        double scale = Math.sqrt(n) * (1 - pe);
        double se = root(fleiss(weights, kappa, pe)) / scale;
        double se0 =
                root(sum((i, j) -> rows[i] * columns[j] * square(weights.at(i, j) - mean(weights, i, j))) - pe * pe)
                        / scale;
        Limits limits = new Limits(kappa, kappa - z * se, Math.min(1, kappa + z * se));
        return new Kappa(
                po,
                pe,
                limits,
                root(sum((i, j) -> p[i][j] * square(weights.at(i, j))) - po * po) / scale,
                root(sum((i, j) -> rows[i] * columns[j] * square(weights.at(i, j))) - pe * pe) / scale,
                se,
                se0,
                kappa / se0,
                Math.min(1, 2 * Normal.above(Math.abs(kappa / se0))),
                beyond(scottChance()),
                beyond(gwetChance()));
    }

    private double fleiss(Weights weights, double kappa, double pe) {
        double spread = sum((i, j) -> p[i][j] * square(weights.at(i, j) - mean(weights, i, j) * (1 - kappa)));
        return spread - square(kappa - pe * (1 - kappa));
    }

    /** The mean weight of row i plus that of column j. */
    private double mean(Weights weights, int i, int j) {
        double sum = 0;
        for (int k = 0; k < p.length; k++) {
            sum += columns[k] * weights.at(i, k) + rows[k] * weights.at(k, j);
        }
        return sum;
    }

    private double scottChance() {
        double sum = 0;
        for (int i = 0; i < p.length; i++) {
            sum += square((rows[i] + columns[i]) / 2);
        }
        return sum;
    }

    private double gwetChance() {
        double sum = 0;
        for (int i = 0; i < p.length; i++) {
            double share = (rows[i] + columns[i]) / 2;
            sum += share * (1 - share);
        }
        return sum / (p.length - 1);
    }

    private double beyond(double chance) {
        double same = 0;
        for (int i = 0; i < p.length; i++) {
            same += p[i][i];
        }
        return (same - chance) / (1 - chance);
    }

    private double sum(Cell of) {
        double sum = 0;
        for (int i = 0; i < p.length; i++) {
            for (int j = 0; j < p.length; j++) {
                sum += of.at(i, j);
            }
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    /** A variance that rounding made a little negative is 0. */
    private static double root(double variance) {
        return Math.sqrt(Math.max(0, variance));
    }

    private interface Cell {
        double at(int i, int j);
    }
}

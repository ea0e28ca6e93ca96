package wickbench.figures.seeing;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * An adaptive procedure that shows next what will tell most: the level at which the expected entropy of what is believed is least
 * (Kontsevich and Tyler, Vision Res. 39:2729, 1999).
 *
 * <p>A value: {@link #answered} gives the next. The reader is believed to see x with the chance γ + (1 − γ − λ)/(1 + e^(−β(x − α))).
 * The entropy is that of α and β together; where several γ and λ are thought possible they are learnt on the way and summed over, so
 * that nothing is shown only to learn them (Prins, J. Vis. 13(7):3, 2013).
 */
public final class LeastEntropy {
    /** Less adds nothing to an entropy that counts, and most cells of a large grid are soon less. */
    private static final double LEAST = 1e-16;

    private final SeeingGrid grid;
    private final double[] belief;

    private LeastEntropy(SeeingGrid grid, double[] belief) {
        this.grid = grid;
        this.belief = belief;
    }

    /** Begins with every cell of the grid believed alike. */
    public static LeastEntropy start(SeeingGrid grid) {
        double[] alike = new double[grid.cells()];
        Arrays.fill(alike, 1d / alike.length);
        return new LeastEntropy(grid, alike);
    }

    /** Returns the procedure after the answer to level {@code x}. */
    public LeastEntropy answered(double x, boolean yes) {
        return after(Inputs.finite("level", x), yes);
    }

    /** Returns the procedure after the answer to nothing at all, which tells of guessing only. */
    public LeastEntropy answeredNothing(boolean yes) {
        return after(Double.NEGATIVE_INFINITY, yes);
    }

    /** Returns the level to show next; the first of several that tell alike. */
    public double next() {
        double[] expected = expectedEntropy();
        int best = 0;
        for (int i = 1; i < expected.length; i++) {
            best = expected[i] < expected[best] ? i : best;
        }
        return grid.levels()[best];
    }

    /** Returns the entropy of what is believed of threshold and slope, in bits. */
    public double entropy() {
        double[] pairs = new double[grid.pairs()];
        for (int cell = 0; cell < belief.length; cell++) {
            pairs[grid.pair(cell)] += belief[cell];
        }
        return bits(pairs, 1);
    }

    /** Returns the entropy expected after showing each level, in bits. */
    public double[] expectedEntropy() {
        return IntStream.range(0, grid.levels().length)
                .mapToDouble(i -> expected(grid.chances(i)))
                .toArray();
    }

    /** Returns the mean of the threshold α. */
    public double threshold() {
        return mean(grid::threshold);
    }

    /** Returns the mean of the slope β. */
    public double slope() {
        return mean(grid::slope);
    }

    /** Returns the mean of the chance γ to say yes to nothing. */
    public double guess() {
        return mean(grid::guess);
    }

    /** Returns the mean of the chance λ to miss what is plain. */
    public double lapse() {
        return mean(grid::lapse);
    }

    /**
     * Returns the threshold below which a share of the belief lies; each threshold of the grid stands for the stretch up to half way
     * to its neighbours.
     *
     * @param share between 0 and 1
     */
    public double thresholdAt(double share) {
        Inputs.level("share", share);
        double[] mass = new double[grid.thresholds().length];
        for (int cell = 0; cell < belief.length; cell++) {
            mass[grid.row(cell)] += belief[cell];
        }
        double left = share;
        int row = 0;
        while (row < mass.length - 1 && left > mass[row]) {
            left -= mass[row];
            row++;
        }
        double part = mass[row] > 0 ? Math.min(1, left / mass[row]) : 0.5;
        return grid.edge(row) + part * (grid.edge(row + 1) - grid.edge(row));
    }

    private double mean(IntToDoubleFunction of) {
        double sum = 0;
        for (int cell = 0; cell < belief.length; cell++) {
            sum += belief[cell] * of.applyAsDouble(cell);
        }
        return sum;
    }

    private double expected(double[] chances) {
        int rates = grid.rates();
        double[] seen = new double[grid.pairs()];
        double[] missed = new double[grid.pairs()];
        double yes = 0;
        for (int pair = 0; pair < seen.length; pair++) {
            for (int cell = pair * rates; cell < (pair + 1) * rates; cell++) {
                double share = belief[cell] * chances[cell];
                seen[pair] += share;
                missed[pair] += belief[cell] - share;
            }
            yes += seen[pair];
        }
        return bits(seen, yes) + bits(missed, 1 - yes);
    }

    private LeastEntropy after(double x, boolean yes) {
        double[] after = new double[belief.length];
        double sum = 0;
        for (int cell = 0; cell < after.length; cell++) {
            double chance = grid.yes(cell, x);
            after[cell] = belief[cell] * (yes ? chance : 1 - chance);
            sum += after[cell];
        }
        if (!(sum > 0)) {
            throw NoAnswer.of("level", "seeing.impossible", x);
        }
        for (int cell = 0; cell < after.length; cell++) {
            after[cell] /= sum;
        }
        return new LeastEntropy(grid, after);
    }

    /** The entropy of parts of a whole, weighed by the whole. */
    private static double bits(double[] parts, double whole) {
        double sum = 0;
        for (double part : parts) {
            sum -= part > LEAST ? part * Math.log(part / whole) : 0;
        }
        return sum / Math.log(2);
    }
}

package wickbench.figures.seeing;

import java.util.Arrays;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * An adaptive procedure that shows next what will tell most: the level at which the expected entropy of what is believed is least
 * (Kontsevich and Tyler, Vision Res. 39:2729, 1999).
 *
 * <p>A value: {@link #answered} gives the next. The reader is believed to see x with the chance γ + (1 − γ − λ)/(1 + e^(−β(x − α))).
 */
public final class LeastEntropy {
    private final Grid grid;
    private final double[] belief;

    /**
     * What is thought possible.
     *
     * @param thresholds values of α
     * @param slopes values of β, above 0
     * @param levels what can be shown
     * @param guess γ, the chance to say yes to nothing
     * @param lapse λ, the chance to miss what is plain
     */
    public record Grid(double[] thresholds, double[] slopes, double[] levels, double guess, double lapse) {
        public Grid {
            Inputs.probability("guess", guess);
            Inputs.probability("lapse", lapse);
            if (guess + lapse >= 1 || thresholds.length == 0 || slopes.length == 0 || levels.length == 0) {
                throw NoAnswer.of("", "seeing.grid");
            }
            Arrays.stream(thresholds).forEach(each -> Inputs.finite("threshold", each));
            Arrays.stream(slopes).forEach(each -> Inputs.positive("slope", each));
            Arrays.stream(levels).forEach(each -> Inputs.finite("level", each));
            thresholds = thresholds.clone();
            slopes = slopes.clone();
            levels = levels.clone();
        }

        private double threshold(int cell) {
            return thresholds[cell / slopes.length];
        }

        private double slope(int cell) {
            return slopes[cell % slopes.length];
        }

        private int cells() {
            return thresholds.length * slopes.length;
        }

        private double yes(int cell, double x) {
            return guess + (1 - guess - lapse) / (1 + Math.exp(-slope(cell) * (x - threshold(cell))));
        }
    }

    private LeastEntropy(Grid grid, double[] belief) {
        this.grid = grid;
        this.belief = belief;
    }

    /** Begins with every cell of the grid believed alike. */
    public static LeastEntropy start(Grid grid) {
        double[] alike = new double[grid.cells()];
        Arrays.fill(alike, 1d / alike.length);
        return new LeastEntropy(grid, alike);
    }

    /** Returns the procedure after the answer to level {@code x}. */
    public LeastEntropy answered(double x, boolean yes) {
        return new LeastEntropy(grid, after(Inputs.finite("level", x), yes));
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

    /** Returns the entropy of what is believed, in bits. */
    public double entropy() {
        return entropy(belief);
    }

    /** Returns the entropy expected after showing each level, in bits. */
    public double[] expectedEntropy() {
        return Arrays.stream(grid.levels()).map(this::expected).toArray();
    }

    /** Returns the mean of the threshold α. */
    public double threshold() {
        return IntStream.range(0, belief.length)
                .mapToDouble(cell -> belief[cell] * grid.threshold(cell))
                .sum();
    }

    /** Returns the mean of the slope β. */
    public double slope() {
        return IntStream.range(0, belief.length)
                .mapToDouble(cell -> belief[cell] * grid.slope(cell))
                .sum();
    }

    private double expected(double x) {
        double yes = IntStream.range(0, belief.length)
                .mapToDouble(cell -> belief[cell] * grid.yes(cell, x))
                .sum();
        return yes * entropy(after(x, true)) + (1 - yes) * entropy(after(x, false));
    }

    private double[] after(double x, boolean yes) {
        double[] after = new double[belief.length];
        for (int cell = 0; cell < after.length; cell++) {
            double chance = grid.yes(cell, x);
            after[cell] = belief[cell] * (yes ? chance : 1 - chance);
        }
        double sum = Arrays.stream(after).sum();
        if (!(sum > 0)) {
            throw NoAnswer.of("level", "seeing.impossible", x);
        }
        return Arrays.stream(after).map(each -> each / sum).toArray();
    }

    private static double entropy(double[] belief) {
        return -Arrays.stream(belief)
                        .filter(each -> each > 0)
                        .map(each -> each * Math.log(each))
                        .sum()
                / Math.log(2);
    }
}

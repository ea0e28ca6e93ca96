package wickbench.figures.seeing;

import java.util.Arrays;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * What is thought possible of a reader, and what can be shown to one.
 *
 * <p>A cell is one reader thought of: a threshold, a slope, a chance to guess and one to lapse. The chances to see each level are
 * reckoned once.
 */
public final class SeeingGrid {
    private final double[] thresholds;
    private final double[] slopes;
    private final double[] levels;
    private final double[] guesses;
    private final double[] lapses;
    private final double[][] chances;

    /**
     * @param thresholds values of α, ascending
     * @param slopes values of β, above 0
     * @param levels what can be shown
     * @param guesses values of γ, the chance to say yes to nothing
     * @param lapses values of λ, the chance to miss what is plain
     */
    public SeeingGrid(double[] thresholds, double[] slopes, double[] levels, double[] guesses, double[] lapses) {
        Arrays.stream(guesses).forEach(each -> Inputs.probability("guess", each));
        Arrays.stream(lapses).forEach(each -> Inputs.probability("lapse", each));
        Arrays.stream(thresholds).forEach(each -> Inputs.finite("threshold", each));
        Arrays.stream(slopes).forEach(each -> Inputs.positive("slope", each));
        Arrays.stream(levels).forEach(each -> Inputs.finite("level", each));
        if (empty(thresholds, slopes, levels, guesses, lapses)
                || !ascending(thresholds)
                || largest(guesses) + largest(lapses) >= 1) {
            throw NoAnswer.of("", "seeing.grid");
        }
        this.thresholds = thresholds.clone();
        this.slopes = slopes.clone();
        this.levels = levels.clone();
        this.guesses = guesses.clone();
        this.lapses = lapses.clone();
        chances = Arrays.stream(levels).mapToObj(this::chances).toArray(double[][]::new);
    }

    double[] thresholds() {
        return thresholds;
    }

    double[] levels() {
        return levels;
    }

    int cells() {
        return pairs() * rates();
    }

    /** How many pairs of threshold and slope there are. */
    int pairs() {
        return thresholds.length * slopes.length;
    }

    int pair(int cell) {
        return cell / rates();
    }

    int row(int cell) {
        return pair(cell) / slopes.length;
    }

    double threshold(int cell) {
        return thresholds[row(cell)];
    }

    double slope(int cell) {
        return slopes[pair(cell) % slopes.length];
    }

    double guess(int cell) {
        return guesses[cell % rates() / lapses.length];
    }

    double lapse(int cell) {
        return lapses[cell % lapses.length];
    }

    double yes(int cell, double x) {
        double room = 1 - guess(cell) - lapse(cell);
        return guess(cell) + room / (1 + Math.exp(-slope(cell) * (x - threshold(cell))));
    }

    /** The chance of each cell to see the level at a place. */
    double[] chances(int level) {
        return chances[level];
    }

    /** Half way between two thresholds; beyond the ends as far as to the next on this side. */
    double edge(int row) {
        int last = thresholds.length - 1;
        if (last == 0) {
            return thresholds[0];
        }
        if (row == 0) {
            return thresholds[0] - (thresholds[1] - thresholds[0]) / 2;
        }
        return row > last
                ? thresholds[last] + (thresholds[last] - thresholds[last - 1]) / 2
                : (thresholds[row - 1] + thresholds[row]) / 2;
    }

    private double[] chances(double x) {
        return IntStream.range(0, cells()).mapToDouble(cell -> yes(cell, x)).toArray();
    }

    /** How many pairs of guess and lapse there are; the cells of one pair of threshold and slope lie together. */
    int rates() {
        return guesses.length * lapses.length;
    }

    private static boolean empty(double[]... lists) {
        return Arrays.stream(lists).anyMatch(list -> list.length == 0);
    }

    private static boolean ascending(double[] values) {
        return IntStream.range(1, values.length).allMatch(i -> values[i - 1] < values[i]);
    }

    private static double largest(double[] values) {
        return Arrays.stream(values).max().orElse(0);
    }
}

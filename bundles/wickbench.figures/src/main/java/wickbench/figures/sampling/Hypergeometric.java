package wickbench.figures.sampling;

import java.util.function.IntToDoubleFunction;

/**
 * How many faulty items a random sample of a lot holds.
 *
 * @param items all items of the lot
 * @param faulty the faulty ones among them
 * @param n the sample
 */
record Hypergeometric(int items, int faulty, int n) {

    /** Returns the mean of {@code value} over all numbers there can be. */
    double mean(IntToDoubleFunction value) {
        int mode = (int) Math.min(most(), Math.max(fewest(), (n + 1L) * (faulty + 1L) / (items + 2L)));
        double weights = 1;
        double sum = value.applyAsDouble(mode);
        double weight = 1;
        for (int j = mode; j < most() && weight > 0; j++) {
            weight *= step(j);
            weights += weight;
            sum += weight * value.applyAsDouble(j + 1);
        }
        weight = 1;
        for (int j = mode - 1; j >= fewest() && weight > 0; j--) {
            weight /= step(j);
            weights += weight;
            sum += weight * value.applyAsDouble(j);
        }
        return sum / weights;
    }

    int fewest() {
        return Math.max(0, n - (items - faulty));
    }

    int most() {
        return Math.min(n, faulty);
    }

    /** The chance of j + 1 faulty ones divided by that of j; weights relative to the mode need no factorials, which lose digits. */
    private double step(int j) {
        return (double) (faulty - j) * (n - j) / ((j + 1.0) * (items - faulty - n + j + 1.0));
    }
}

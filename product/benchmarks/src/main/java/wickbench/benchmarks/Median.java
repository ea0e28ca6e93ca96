package wickbench.benchmarks;

import java.util.Arrays;

/** The middle of some values. */
final class Median {
    private Median() {}

    static double of(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}

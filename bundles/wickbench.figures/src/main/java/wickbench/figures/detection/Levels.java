package wickbench.figures.detection;

import java.util.Arrays;
import java.util.stream.IntStream;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/**
 * A detection study as it was run: at each level so many tests, so many positives.
 *
 * @param levels the levels, in any unit; 0 is a blank
 * @param tests tests at each, at least 1
 * @param positives positives at each
 */
public record Levels(double[] levels, long[] tests, long[] positives) {
    public Levels {
        if (levels.length == 0 || levels.length != tests.length || levels.length != positives.length) {
            throw NoAnswer.of("", "detection.rows");
        }
        for (int i = 0; i < levels.length; i++) {
            check(levels[i], tests[i], positives[i], i);
        }
        levels = levels.clone();
        tests = tests.clone();
        positives = positives.clone();
    }

    private static void check(double level, long tests, long positives, int row) {
        try {
            Inputs.finite("level", level);
            Inputs.size("tests", tests);
            Inputs.part("positives", positives, "tests", tests);
        } catch (NoAnswer none) {
            throw none.inRow(row);
        }
    }

    /** Returns how many tests were blanks. */
    public long blankTests() {
        return sum(tests);
    }

    /** Returns how many blanks were positive. */
    public long blankPositives() {
        return sum(positives);
    }

    private long sum(long[] counts) {
        return IntStream.range(0, counts.length)
                .filter(this::isBlank)
                .mapToLong(i -> counts[i])
                .sum();
    }

    /** Tells whether this row, counted from 0, holds blanks. */
    public boolean isBlank(int row) {
        return levels[row] == 0 && Arrays.stream(levels).allMatch(level -> level >= 0);
    }

    /** Returns the rows that are no blanks; on a logarithm each level must be above 0. */
    Levels fitted(Dose dose) {
        int[] rows = IntStream.range(0, levels.length)
                .filter(i -> !isBlank(i))
                .peek(i -> checkLogarithm(dose, i))
                .toArray();
        if (rows.length == 0) {
            throw NoAnswer.of("", "detection.only-blanks");
        }
        return new Levels(
                Arrays.stream(rows).mapToDouble(i -> levels[i]).toArray(),
                Arrays.stream(rows).mapToLong(i -> tests[i]).toArray(),
                Arrays.stream(rows).mapToLong(i -> positives[i]).toArray());
    }

    private void checkLogarithm(Dose dose, int row) {
        if (dose.isLogarithm() && !(levels[row] > 0)) {
            throw NoAnswer.of("level", "detection.level-below-zero", levels[row])
                    .inRow(row);
        }
    }

    /** Refuses data from which no curve can be told: the likelihood would grow without end. */
    void checkOverlap(boolean slope) {
        long all = Arrays.stream(tests).sum();
        long positive = Arrays.stream(positives).sum();
        if (positive == 0 || positive == all) {
            throw NoAnswer.of("", positive == 0 ? "detection.none-positive" : "detection.all-positive", all);
        }
        if (slope) {
            checkSlope();
        }
    }

    private void checkSlope() {
        if (Arrays.stream(levels).distinct().count() < 2) {
            throw NoAnswer.of("", "detection.one-level");
        }
        double firstPositive = extreme(positives, true);
        double lastPositive = extreme(positives, false);
        long[] negatives = IntStream.range(0, tests.length)
                .mapToLong(i -> tests[i] - positives[i])
                .toArray();
        double firstNegative = extreme(negatives, true);
        double lastNegative = extreme(negatives, false);
        if (lastNegative <= firstPositive || lastPositive <= firstNegative) {
            throw NoAnswer.of("", "detection.separated", Math.min(lastNegative, lastPositive));
        }
    }

    private double extreme(long[] counts, boolean lowest) {
        var seen = IntStream.range(0, levels.length).filter(i -> counts[i] > 0).mapToDouble(i -> levels[i]);
        return lowest ? seen.min().getAsDouble() : seen.max().getAsDouble();
    }
}

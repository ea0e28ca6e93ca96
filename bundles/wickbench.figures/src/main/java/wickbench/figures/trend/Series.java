package wickbench.figures.trend;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;

/** What several charts ask of a series. */
final class Series {
    /** The mean range of two normal values, in standard deviations, as the handbooks round it (d₂). */
    static final double D2 = 1.128;

    static final double SIGMAS = 3;

    private Series() {}

    static <T> List<T> atLeast(List<T> rows, int fewest) {
        if (rows.size() < fewest) {
            throw NoAnswer.of("", "trend.too-few", rows.size(), fewest);
        }
        return rows;
    }

    /** Holds each value against its range; a complaint names the row. */
    static double[] each(double[] values, DoubleUnaryOperator check) {
        for (int i = 0; i < values.length; i++) {
            try {
                check.applyAsDouble(values[i]);
            } catch (NoAnswer e) {
                throw e.inRow(i);
            }
        }
        return values;
    }

    static double[] finite(List<Double> values) {
        return each(numbers(values), value -> Inputs.finite("value", value));
    }

    static double[] numbers(List<? extends Number> values) {
        return values.stream().mapToDouble(Number::doubleValue).toArray();
    }

    static double mean(double[] values) {
        return Arrays.stream(values).sum() / values.length;
    }

    /** Returns the middle value; of an even number, halfway between the two in the middle. */
    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /** Returns the mean of |xᵢ − xᵢ₋₁|, divided by d₂: the spread from one point to the next. */
    static double spread(double[] values) {
        double sum = 0;
        for (int i = 1; i < values.length; i++) {
            sum += Math.abs(values[i] - values[i - 1]);
        }
        return sum / (values.length - 1) / D2;
    }
}

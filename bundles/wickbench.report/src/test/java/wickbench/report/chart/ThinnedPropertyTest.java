package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Series;
import wickbench.api.chart.Span;

class ThinnedPropertyTest {
    private static final Axis.Scale LINEAR = new Axis.Linear();

    @Property
    void each_column_keeps_its_extremes_its_ends_and_its_gaps(
            @ForAll @Size(min = 1, max = 300) List<@IntRange(min = -5, max = 50) Integer> values,
            @ForAll @IntRange(min = 1, max = 40) int columns) {
        double[] x = new double[values.size()];
        double[] y = new double[values.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
            // some of the values are gaps
            y[i] = values.get(i) < 0 ? Double.NaN : values.get(i);
        }
        columnsKeepWhatIsSeen(x, y, new Span(0, x.length), columns);
    }

    @Property
    void any_window_keeps_the_extremes_of_its_columns(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(min = -3, max = 30) Integer> runs,
            @ForAll @IntRange(min = 1, max = 40) int columns,
            @ForAll @IntRange(min = 0, max = 900) int from,
            @ForAll @IntRange(min = 1, max = 1000) int length,
            @ForAll long seed) {
        // many more points than a block holds; some runs are gaps, and some points stand above one another
        int count = runs.stream().mapToInt(run -> 10 * Math.abs(run) + 1).sum();
        double[] x = new double[count];
        double[] y = new double[count];
        Random chance = new Random(seed);
        int i = 0;
        for (int run : runs) {
            for (int k = 0; k <= 10 * Math.abs(run); k++, i++) {
                x[i] = i == 0 ? 0 : x[i - 1] + chance.nextInt(3);
                y[i] = run < 0 ? Double.NaN : chance.nextInt(100);
            }
        }
        columnsKeepWhatIsSeen(x, y, new Span(from, from + length), columns);
    }

    @Property
    void a_logarithmic_axis_keeps_the_least_that_it_can_show(
            @ForAll @Size(min = 1, max = 300) List<@IntRange(min = -5, max = 50) Integer> values) {
        double[] x = new double[values.size()];
        Arrays.setAll(x, i -> i);
        double[] y = values.stream().mapToDouble(Integer::doubleValue).toArray();
        Extremes all = Extremes.of(new Series("s", Series.Mark.LINE, x, y), new Axis.Logarithmic());
        double[] drawable = Arrays.stream(y).map(v -> v > 0 ? v : Double.NaN).toArray();
        Thinned thinned = Thinned.of(all, LINEAR, new Span(0, x.length), 3);
        assertThat(extremes(thinned.y())).isEqualTo(extremes(drawable));
        assertThat(y)
                .isEqualTo(values.stream().mapToDouble(Integer::doubleValue).toArray());
    }

    @Property
    void what_stays_is_a_part_of_what_was_in_its_order(
            @ForAll @Size(min = 1, max = 200) List<@IntRange(min = 0, max = 9) Integer> values) {
        double[] x = new double[values.size()];
        double[] y = values.stream().mapToDouble(Integer::doubleValue).toArray();
        Arrays.setAll(x, i -> i);
        Thinned thinned = thinned(x, y, new Span(0, x.length), 7);
        for (int i = 0; i < thinned.x().length; i++) {
            assertThat(thinned.y()[i]).isEqualTo(y[(int) thinned.x()[i]]);
            assertThat(i == 0 || thinned.x()[i] > thinned.x()[i - 1]).isTrue();
        }
    }

    private static Thinned thinned(double[] x, double[] y, Span window, int columns) {
        return Thinned.of(Extremes.of(new Series("s", Series.Mark.LINE, x, y), LINEAR), LINEAR, window, columns);
    }

    private static void columnsKeepWhatIsSeen(double[] x, double[] y, Span window, int columns) {
        Thinned thinned = thinned(x, y, window, columns);
        for (int column = 0; column < columns; column++) {
            double[] all = column(x, y, window, columns, column);
            double[] kept = column(thinned.x(), thinned.y(), window, columns, column);
            assertThat(extremes(kept)).isEqualTo(extremes(all));
            assertThat(hasGap(kept)).isEqualTo(hasGap(all));
            // so few points that a column each would do are not thinned
            assertThat(kept).hasSizeLessThanOrEqualTo(Math.max(10, columns));
            if (all.length > 0) {
                assertThat(Double.valueOf(kept[0])).isEqualTo(Double.valueOf(all[0]));
                assertThat(Double.valueOf(kept[kept.length - 1])).isEqualTo(Double.valueOf(all[all.length - 1]));
            }
        }
    }

    private static double[] column(double[] x, double[] y, Span window, int columns, int column) {
        return IntStream.range(0, x.length)
                .filter(i -> (int) Math.floor((x[i] - window.low()) / window.length() * columns) == column)
                .mapToDouble(i -> y[i])
                .toArray();
    }

    private static List<Double> extremes(double[] values) {
        var numbers = Arrays.stream(values).filter(v -> !Double.isNaN(v)).summaryStatistics();
        return List.of(numbers.getMin(), numbers.getMax());
    }

    private static boolean hasGap(double[] values) {
        return Arrays.stream(values).anyMatch(Double::isNaN);
    }
}

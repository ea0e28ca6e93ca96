package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Series;
import wickbench.api.chart.Span;

class ThinnedTest {
    private static final Axis.Scale LINEAR = new Axis.Linear();

    @Test
    void a_million_points_keep_their_single_spike() {
        double[] x = new double[1_000_000];
        double[] y = new double[x.length];
        Random chance = new Random(1);
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
            y[i] = chance.nextDouble();
        }
        y[777_777] = 5;
        y[123_456] = -5;
        Thinned thinned = thinned(x, y, new Span(0, x.length), 800);
        assertThat(thinned.x()).hasSizeLessThanOrEqualTo(800 * 4).contains(777_777, 123_456);
    }

    @Test
    void a_few_marks_above_one_another_all_stay() {
        double[] x = {1, 1, 1, 1, 1, 1, 2};
        double[] y = {0, 3, 1, 5, 2, 4, 0};
        Thinned thinned = thinned(x, y, new Span(0, 3), 100);
        assertThat(thinned.y()).containsExactly(y);
        assertThat(thinned.dense()).isFalse();
    }

    @Test
    void one_point_stays_beyond_either_end_so_that_lines_run_on() {
        double[] x = {0, 10, 20, 30, 40};
        Thinned thinned = thinned(x, x, new Span(12, 28), 100);
        assertThat(thinned.x()).containsExactly(10, 20, 30);
    }

    private static Thinned thinned(double[] x, double[] y, Span window, int columns) {
        return Thinned.of(Extremes.of(new Series("s", Series.Mark.LINE, x, y), LINEAR), LINEAR, window, columns);
    }
}

package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import wickbench.figures.NoAnswer;

class CountChartTest {
    private static final List<Long> WAFERS = LongStream.of(
                    16, 14, 28, 16, 12, 20, 10, 12, 10, 17, 19, 17, 14, 16, 15, 13, 14, 16, 11, 20, 11, 19, 16, 31, 13)
            .boxed()
            .toList();

    /** NIST/SEMATECH e-Handbook §6.3.3.1: centre 16, limits 28 and 4; from memory and recomputed. */
    @Test
    void the_handbook_series() {
        LimitChart chart = CountChart.of(WAFERS, Basis.allPoints()).chart();
        assertThat(WAFERS.stream().mapToLong(Long::longValue).sum()).isEqualTo(400);
        assertThat(chart.centre()).isEqualTo(16);
        assertThat(chart.points()).allSatisfy(point -> {
            assertThat(point.upper()).isEqualTo(28);
            assertThat(point.lower()).isEqualTo(4);
        });
        assertThat(chart.signals()).contains(new Signal(Signal.Kind.ABOVE_LIMIT, 24, 31, 28));
        assertThat(chart.signals()).filteredOn(signal -> signal.point() > 0).hasSize(1);
    }

    /** By hand: without the 31 the mean is 369/24 = 15.375. */
    @Test
    void a_point_set_aside_counts_for_nothing() {
        LimitChart chart = CountChart.of(WAFERS, new Basis.Points(Set.of(24))).chart();
        assertThat(chart.centre()).isEqualTo(15.375);
        assertThat(chart.points()).hasSize(25);
    }

    @Test
    void refuses_what_is_no_count() {
        assertThatThrownBy(() -> CountChart.of(List.of(), Basis.allPoints())).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> CountChart.of(List.of(3L, -1L), Basis.allPoints()))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        assertThatThrownBy(() -> CountChart.of(List.of(3L), new Basis.Known(-1)))
                .isInstanceOf(NoAnswer.class);
    }
}

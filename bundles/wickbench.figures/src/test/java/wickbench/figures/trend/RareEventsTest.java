package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import wickbench.figures.NoAnswer;

class RareEventsTest {
    private static final List<Long> GAPS =
            LongStream.of(5, 7, 2, 11, 0, 3, 8, 4, 1, 16, 6, 9, 2, 5, 3).boxed().toList();

    /** Formula of Benneyan, Health Care Manag. Sci. 4:305 (2001); values computed with R 4.2.2; quantiles of the geometric law. */
    @Test
    void counts_between_events() {
        GapChart gaps = GapChart.of(GAPS, 0);
        assertThat(gaps.chart().centre()).isEqualTo(5.466667, within(5e-7));
        assertThat(gaps.chart().points().get(0).upper()).isEqualTo(23.303707, within(5e-7));
        assertThat(gaps.chart().points().get(0).lower()).isZero();
        assertThat(5.466667 - (23.303707 - 5.466667)).isEqualTo(-12.37, within(0.005));
        assertThat(gaps.likely()).isEqualTo(new GapChart.Likely(0, 4, 39));
        assertThat(gaps.chart().signals()).isEmpty();
    }

    /** The extra rule of Benneyan's paper: three zeros in a row. */
    @Test
    void three_events_without_a_gap_are_a_signal() {
        GapChart gaps = GapChart.of(List.of(9L, 0L, 0L, 12L, 0L, 0L, 0L, 0L, 5L), 0);
        assertThat(gaps.chart().signals())
                .filteredOn(signal -> signal.kind() == Signal.Kind.NO_GAPS)
                .extracting(Signal::point)
                .containsExactly(7);
    }

    /** By hand: counted from 1, the same gaps lie one higher and the limits with them. */
    @Test
    void a_smallest_gap_of_one_moves_everything_by_one() {
        GapChart from0 = GapChart.of(GAPS, 0);
        GapChart from1 = GapChart.of(GAPS.stream().map(gap -> gap + 1).toList(), 1);
        assertThat(from1.chart().centre()).isEqualTo(from0.chart().centre() + 1, within(1e-12));
        assertThat(from1.chart().points().get(0).upper())
                .isEqualTo(from0.chart().points().get(0).upper() + 1, within(1e-12));
        assertThat(from1.likely()).isEqualTo(new GapChart.Likely(1, 5, 40));
    }

    @Test
    void events_that_never_stop_have_no_spread() {
        GapChart gaps = GapChart.of(List.of(0L, 0L), 0);
        assertThat(gaps.chart().centre()).isZero();
        assertThat(gaps.likely()).isEqualTo(new GapChart.Likely(0, 0, 0));
    }

    /** By hand, y = t^0.2777 of 1, 1, 1024: 1, 1, 6.8542; mean |Δ| 2.9271, ÷ 1.128, × 3 = 7.7849. */
    @Test
    void times_between_events() {
        TimeChart chart = TimeChart.of(List.of(1.0, 1.0, 1024.0));
        double y = Math.pow(1024, 0.2777);
        double centre = (2 + y) / 3;
        double half = 3 * ((y - 1) / 2) / 1.128;
        assertThat(chart.transformed().centre()).isEqualTo(centre, within(1e-12));
        assertThat(chart.transformed().points().get(2).upper()).isEqualTo(centre + half, within(1e-12));
        assertThat(chart.times().centre()).isEqualTo(Math.pow(centre, 1 / 0.2777), within(1e-9));
        assertThat(chart.times().points().get(2).value()).isEqualTo(1024);
        assertThat(chart.times().points().get(0).lower()).isZero();
        assertThat(half).isEqualTo(7.7849, within(0.0005));
    }

    /** A long quiet time after many short ones lies above the limit on both scales. */
    @Test
    void a_signal_is_told_on_both_scales() {
        TimeChart chart = TimeChart.of(List.of(3.0, 4.0, 3.5, 4.2, 3.1, 3.8, 4.1, 3.3, 90.0));
        assertThat(chart.transformed().signals()).extracting(Signal::point).contains(9);
        Signal told = chart.times().signals().stream()
                .filter(signal -> signal.point() == 9)
                .findFirst()
                .orElseThrow();
        assertThat(told.measured()).isEqualTo(90);
        assertThat(told.limit()).isEqualTo(chart.times().points().get(8).upper());
    }

    @Test
    void refuses_what_is_no_gap_and_no_time() {
        assertThatThrownBy(() -> GapChart.of(List.of(), 0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> GapChart.of(List.of(3L, 0L), 1))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        assertThatThrownBy(() -> GapChart.of(List.of(3L), -1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> TimeChart.of(List.of(3.0))).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> TimeChart.of(List.of(3.0, -1.0))).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> TimeChart.of(List.of(3.0, Double.NaN))).isInstanceOf(NoAnswer.class);
    }

    /** The limits of the check data (facts computed with R: ȳ 5.466667, UCL 23.303707) hold other gaps against them. */
    @Test
    void limits_of_an_earlier_period_stay_where_they_were() {
        GapChart base = GapChart.of(GAPS, 0);
        GapChart held =
                GapChart.of(List.of(2L, 30L), 0, OptionalDouble.of(base.chart().centre()));

        assertThat(held.chart().points().get(1).upper()).isCloseTo(23.303707, within(1e-6));
        assertThat(held.chart().signals()).extracting(Signal::point).contains(2);

        List<Double> times = List.of(3.0, 4.0, 3.5, 4.2, 3.1, 3.8, 4.1, 3.3);
        TimeChart before = TimeChart.of(times);
        double spread = (before.transformed().points().get(0).upper()
                        - before.transformed().centre())
                / 3;
        TimeChart later = TimeChart.of(List.of(90.0), before.times().centre(), spread);
        assertThat(later.times().points().get(0).upper())
                .isCloseTo(before.times().points().get(0).upper(), within(1e-9));
        assertThat(later.times().signals()).isNotEmpty();
    }
}

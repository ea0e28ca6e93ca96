package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.CheckTable;
import wickbench.figures.NoAnswer;

class ProportionChartTest {
    private final List<Group> wafers = CheckTable.beside(getClass(), "pchart_30x50.csv").rows().stream()
            .map(row -> new Group((long) row[1], (long) row[2]))
            .toList();

    /** Montgomery, Introduction to SQC, Table 7.1, printed .2313, .4102, .0524, from memory; more digits by R 4.2.2. */
    @Test
    void the_textbook_series() {
        LimitChart chart = ProportionChart.plain(wafers, Basis.allPoints()).chart();
        assertThat(wafers).hasSize(30);
        assertThat(wafers.stream().mapToLong(Group::count).sum()).isEqualTo(347);
        assertThat(chart.centre()).isEqualTo(.2313333, within(5e-8));
        assertThat(chart.points().get(0).upper()).isEqualTo(.4102391, within(5e-8));
        assertThat(chart.points().get(0).lower()).isEqualTo(.0524275, within(5e-8));
        assertThat(chart.centre()).isEqualTo(.2313, within(5e-5));
        assertThat(chart.points().get(0).upper()).isEqualTo(.4102, within(5e-5));
        assertThat(chart.points().get(0).lower()).isEqualTo(.0524, within(5e-5));
        assertThat(above(chart)).containsExactly(15, 23);
        assertThat(chart.points().get(14).value()).isEqualTo(.44);
        assertThat(chart.points().get(22).value()).isEqualTo(.48);
    }

    /** The same without samples 15 and 23, printed .2150, .3893, .0407, from memory; more digits by R 4.2.2. */
    @Test
    void the_textbook_series_with_two_points_set_aside() {
        LimitChart chart =
                ProportionChart.plain(wafers, new Basis.Points(Set.of(15, 23))).chart();
        assertThat(chart.centre()).isEqualTo(.2150000, within(5e-8));
        assertThat(chart.points().get(0).upper()).isEqualTo(.3892972, within(5e-8));
        assertThat(chart.points().get(0).lower()).isEqualTo(.0407028, within(5e-8));
        assertThat(above(chart)).containsExactly(21);
        assertThat(chart.points().get(20).value()).isEqualTo(.40);
        assertThat(chart.points().get(14).counted()).isFalse();
    }

    /** p′ after Laney, Quality Engineering 14:531 (2002); values computed with R 4.2.2. */
    @Test
    void overdispersed_shares() {
        long[] counts = {25, 31, 18, 40, 22, 36, 29, 44, 20, 33};
        long[] sizes = {410, 520, 380, 560, 400, 505, 470, 610, 395, 490};
        List<Group> groups = IntStream.range(0, counts.length)
                .mapToObj(i -> new Group(counts[i], sizes[i]))
                .toList();
        ProportionChart wide = ProportionChart.overdispersed(groups, Basis.allPoints());
        assertThat(wide.chart().centre()).isEqualTo(.0628692, within(5e-8));
        assertThat(wide.spread()).isEqualTo(1.1191642, within(5e-8));
        assertThat(wide.chart().points().get(0).upper()).isEqualTo(.10312, within(5e-6));
        assertThat(wide.chart().points().get(0).lower()).isEqualTo(.02262, within(5e-6));
        assertThat(wide.chart().points().get(3).upper()).isEqualTo(.09731, within(5e-6));
        LimitChart plain = ProportionChart.plain(groups, Basis.allPoints()).chart();
        assertThat(plain.points().get(0).upper()).isEqualTo(.09883, within(5e-6));
        assertThat(plain.points().get(0).lower()).isEqualTo(.02691, within(5e-6));
    }

    /** By hand: .1 ± 3·√(.09/100) = .1 ± .09. */
    @Test
    void a_known_centre_is_kept() {
        LimitChart chart = ProportionChart.plain(List.of(new Group(20, 100), new Group(0, 100)), new Basis.Known(.1))
                .chart();
        assertThat(chart.centre()).isEqualTo(.1);
        assertThat(chart.points().get(0).upper()).isEqualTo(.19, within(1e-12));
        assertThat(chart.signals())
                .extracting(Signal::kind)
                .containsExactly(Signal.Kind.ABOVE_LIMIT, Signal.Kind.BELOW_LIMIT);
    }

    @ParameterizedTest
    @CsvSource({"-1, 5", "6, 5", "0, 0", "0, -1"})
    void refuses_what_is_no_group(long count, long size) {
        assertThatThrownBy(() -> new Group(count, size)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_where_there_is_no_answer() {
        Basis all = Basis.allPoints();
        List<Group> never = List.of(new Group(0, 10), new Group(0, 10));
        List<Group> one = List.of(new Group(1, 10));
        assertThatThrownBy(() -> ProportionChart.plain(List.of(), all)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ProportionChart.overdispersed(never, all)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ProportionChart.overdispersed(one, all)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ProportionChart.plain(one, new Basis.Points(Set.of(1))))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ProportionChart.plain(one, new Basis.Points(Set.of(2))))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ProportionChart.plain(one, new Basis.Known(Double.NaN)))
                .isInstanceOf(NoAnswer.class);
    }

    private static List<Integer> above(LimitChart chart) {
        return chart.signals().stream()
                .filter(signal -> signal.kind() == Signal.Kind.ABOVE_LIMIT)
                .map(Signal::point)
                .toList();
    }
}

package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class TrendLawsTest {

    @Property
    void limits_enclose_the_centre_inside_the_unit(
            @ForAll @Size(min = 1, max = 40) List<@IntRange(max = 30) Integer> counts,
            @ForAll @IntRange(min = 30, max = 500) int size) {
        List<Group> groups =
                counts.stream().map(count -> new Group(count, size)).toList();
        LimitChart chart = ProportionChart.plain(groups, Basis.allPoints()).chart();
        assertThat(chart.points())
                .allSatisfy(point -> assertThat(chart.centre()).isBetween(point.lower(), point.upper()));
        assertThat(chart.points()).allSatisfy(point -> assertThat(point.lower()).isGreaterThanOrEqualTo(0));
        assertThat(chart.points()).allSatisfy(point -> assertThat(point.upper()).isLessThanOrEqualTo(1));
    }

    @Property
    void larger_groups_have_narrower_limits(
            @ForAll @IntRange(min = 1, max = 20) int count, @ForAll @IntRange(min = 40, max = 500) int size) {
        Basis known = new Basis.Known((double) count / size);
        List<Point> points = ProportionChart.plain(
                        List.of(new Group(count, size), new Group(4L * count, 4L * size)), known)
                .chart()
                .points();
        assertThat(points.get(1).upper()).isLessThan(points.get(0).upper());
    }

    @Property
    void shifting_all_values_shifts_nothing_but_the_target(
            @ForAll @Size(min = 1, max = 40) List<@Scale(2) @DoubleRange(min = -5, max = 5) Double> values) {
        Cusum.Chart at0 = new Cusum(0, .5, 5).of(values);
        Cusum.Chart at64 =
                new Cusum(64, .5, 5).of(values.stream().map(value -> value + 64).toList());
        IntStream.range(0, values.size()).forEach(i -> {
            assertThat(at64.points().get(i).high())
                    .isEqualTo(at0.points().get(i).high(), within(1e-9));
            assertThat(at64.points().get(i).low()).isEqualTo(at0.points().get(i).low(), within(1e-9));
        });
    }

    @Property
    void an_average_stays_within_what_it_averages(
            @ForAll @Size(min = 1, max = 40) List<@Scale(2) @DoubleRange(min = -5, max = 5) Double> values,
            @ForAll @Scale(2) @DoubleRange(min = .01, max = 1) double weight) {
        LimitChart chart = new Ewma(0, 1, weight, 3).of(values);
        assertThat(chart.points()).allSatisfy(point -> assertThat(point.value()).isBetween(-5.0, 5.0));
    }

    @Property
    void a_run_and_the_crossings_share_the_points(
            @ForAll @Size(max = 60) List<@Scale(1) @DoubleRange(min = -1, max = 1) Double> values) {
        Runs runs = Runs.of(values, 0);
        assertThat(runs.longest() + runs.crossings()).isLessThanOrEqualTo(runs.useful());
    }

    @Property(tries = 30)
    void a_larger_shift_is_found_sooner(
            @ForAll @Scale(2) @DoubleRange(min = 0, max = 3) double shift,
            @ForAll @Scale(2) @DoubleRange(min = 1, max = 5) double h) {
        assertThat(RunLength.cusum(.5, h, shift + .25)).isLessThan(RunLength.cusum(.5, h, shift) + 1e-6);
        assertThat(RunLength.ewma(.2, 2.5, shift + .25)).isLessThan(RunLength.ewma(.2, 2.5, shift));
    }
}

package wickbench.stock.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import wickbench.figures.store.Ageing;
import wickbench.figures.store.Spell;
import wickbench.figures.store.Warmth;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;

class AnalysisTest {
    private static final Range COLD_STORE = new Range(2, 8);
    private static final Instant START = Instant.parse("2026-07-01T00:00:00Z");
    private static final Duration STEP = Duration.ofMinutes(10);

    @Test
    void an_excursion_has_length_peak_and_degree_hours() {
        // three readings above 8 °C, ten minutes each: 2 + 4 + 1 degrees for a sixth of an hour
        Excursion found = only(5, 10, 12, 9, 5, 6);
        assertThat(found.cause()).isEqualTo(Cause.WARM);
        assertThat(found.from()).isEqualTo(START.plus(STEP));
        assertThat(found.length()).isEqualTo(STEP.multipliedBy(3));
        assertThat(found.peak()).isEqualTo(12);
        assertThat(found.degreeHours()).isEqualTo(7.0 / 6, within(1e-12));
    }

    @Test
    void freezing_is_judged_by_itself() {
        assertThat(outside(5, 1, 0, 1, 5)).extracting(Excursion::cause).containsExactly(Cause.COLD, Cause.FROZEN);
        assertThat(outside(5, 1, 0.1, 1, 5)).extracting(Excursion::cause).containsExactly(Cause.COLD);
    }

    @Test
    void both_ends_of_the_range_are_inside() {
        assertThat(outside(2, 8, 2, 8, 5)).isEmpty();
    }

    @Test
    void a_gap_is_a_gap_and_ends_what_went_on() {
        Analysis analysis = new Analysis(Set.of(COLD_STORE));
        for (int i = 0; i < 10; i++) {
            analysis.reading(at(i), i == 9 ? 9 : 5);
        }
        analysis.reading(at(50), 6);
        analysis.reading(at(51), 5);
        List<Excursion> found = analysis.end().outside(COLD_STORE);
        assertThat(found).extracting(Excursion::cause).containsExactly(Cause.WARM, Cause.GAP);
        assertThat(found.get(0).length()).isEqualTo(STEP);
        assertThat(found.get(1).length()).isEqualTo(STEP.multipliedBy(41));
    }

    @Test
    void a_thermometer_that_stands_still_for_a_day_shows_nothing() {
        Analysis analysis = new Analysis(Set.of(COLD_STORE));
        for (int i = 0; i < 400; i++) {
            analysis.reading(at(i), i < 100 || i > 300 ? 4 + i % 3 * 0.1 : 4);
        }
        List<Excursion> found = analysis.end().outside(COLD_STORE);
        assertThat(found).extracting(Excursion::cause).containsExactly(Cause.STUCK);
        assertThat(found.get(0).length()).isGreaterThan(Duration.ofDays(1));
    }

    @Test
    void a_probe_at_the_edge_of_its_range_fills_no_memory_and_the_earliest_and_the_longest_are_kept() {
        Analysis analysis = new Analysis(Set.of(COLD_STORE));
        int crossings = 200_000;
        for (int i = 0; i < 2 * crossings; i++) {
            // one long one among the many short ones, late in the file
            boolean lasting = i > 300_000 && i < 300_010;
            analysis.reading(at(i), lasting || i % 2 == 1 ? 8.1 : 7.9);
        }
        List<Excursion> kept = analysis.end().outside(COLD_STORE);
        assertThat(kept).hasSizeLessThanOrEqualTo(2 * (Excursions.EARLIEST + Excursions.LONGEST));
        assertThat(kept.size() + analysis.leftOut(COLD_STORE)).isEqualTo(crossings - 4);
        assertThat(kept.get(0).from()).isEqualTo(START.plus(STEP));
        assertThat(kept).extracting(Excursion::length).contains(STEP.multipliedBy(9));
        assertThat(kept).isSortedAccordingTo(java.util.Comparator.comparing(Excursion::from));
    }

    @Test
    void what_goes_on_at_the_end_is_told() {
        assertThat(only(5, 5, 9, 10).length()).isEqualTo(STEP.multipliedBy(2));
    }

    @Test
    void the_kinetic_mean_of_the_kept_spells_is_the_printed_one() {
        // USP <1079.2>; the example 2, 2, 5, 8, 8, 8, 8 °C is printed with 6.25
        Warmth warmth = Warmth.of(analysed(2, 2, 5, 8, 8, 8, 8).spells(), Ageing.usual());
        assertThat(warmth.kinetic()).isEqualTo(6.2502648, within(1e-6));
        // computed with 40 digits
        assertThat(kinetic(5, 5, 5, 15)).isEqualTo(8.7859, within(5e-5));
        assertThat(kinetic(2, 3, 4, 5, 6, 7, 8)).isEqualTo(5.2423, within(5e-5));
    }

    @Property
    void hours_add_up_and_no_reading_is_lost(
            @ForAll @Size(min = 1, max = 2000) List<@DoubleRange(min = -20, max = 40) Double> celsius) {
        double[] values = celsius.stream().mapToDouble(Double::doubleValue).toArray();
        Analysis analysis = analysed(values);
        double hours = analysis.spells().stream().mapToDouble(Spell::hours).sum();
        assertThat(analysis.rows()).isEqualTo(values.length);
        assertThat(hours).isEqualTo((values.length == 1 ? 0 : values.length) / 6.0, within(1e-6));
        assertThat(analysis.sketch().stretches()).hasSizeLessThanOrEqualTo(Sketch.MOST);
        assertThat(analysis.sketch().stretches().stream()
                        .mapToDouble(Sketch.Stretch::high)
                        .max()
                        .orElseThrow())
                .isEqualTo(java.util.Arrays.stream(values).max().orElseThrow());
    }

    @Property
    void a_wider_range_never_finds_a_longer_excursion(
            @ForAll @Size(min = 2, max = 300) List<@DoubleRange(min = -5, max = 20) Double> celsius) {
        Range wider = new Range(1, 9);
        Analysis analysis = new Analysis(Set.of(COLD_STORE, wider));
        for (int i = 0; i < celsius.size(); i++) {
            analysis.reading(at(i), celsius.get(i));
        }
        analysis.end();
        assertThat(longest(analysis.outside(wider))).isLessThanOrEqualTo(longest(analysis.outside(COLD_STORE)));
    }

    private static long longest(List<Excursion> found) {
        return found.stream().mapToLong(each -> each.length().toMinutes()).max().orElse(0);
    }

    private static double kinetic(double... celsius) {
        return Warmth.of(analysed(celsius).spells(), Ageing.usual()).kinetic();
    }

    private static Excursion only(double... celsius) {
        List<Excursion> found = outside(celsius);
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<Excursion> outside(double... celsius) {
        return analysed(celsius).outside(COLD_STORE);
    }

    private static Analysis analysed(double... celsius) {
        Analysis analysis = new Analysis(Set.of(COLD_STORE));
        for (int i = 0; i < celsius.length; i++) {
            analysis.reading(at(i), celsius[i]);
        }
        return analysis.end();
    }

    private static long at(int step) {
        return START.plus(STEP.multipliedBy(step)).toEpochMilli();
    }
}

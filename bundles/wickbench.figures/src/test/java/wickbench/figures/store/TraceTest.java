package wickbench.figures.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickbench.figures.NoAnswer;

class TraceTest {
    private static final Instant START = Instant.parse("2026-03-01T08:00:00Z");

    /** By hand: equal intervals weigh equally, the last reading too. */
    @Test
    void equal_intervals_weigh_equally() {
        Trace trace = Trace.of(readings(0, 5, 1, 5, 2, 5, 3, 15));
        assertThat(trace.spells()).extracting(Spell::hours).containsExactly(1.0, 1.0, 1.0, 1.0);
        assertThat(Warmth.of(trace.spells(), Ageing.usual()).kinetic()).isEqualTo(8.7859, within(0.00005));
        assertThat(trace.gaps()).isZero();
    }

    /** By hand: between hours 2 and 12 one usual hour is covered and nine are not. */
    @Test
    void a_gap_is_told_and_not_filled() {
        Trace trace = Trace.of(readings(0, 5, 1, 5, 2, 5, 12, 5, 13, 5));
        assertThat(trace.gaps()).isEqualTo(1);
        assertThat(trace.uncovered()).isEqualTo(9);
        assertThat(trace.longestGap()).isEqualTo(9);
        assertThat(Warmth.of(trace.spells(), Ageing.usual()).hours()).isEqualTo(5);
    }

    @Test
    void whoever_allows_long_intervals_has_no_gap() {
        Trace trace = Trace.of(readings(0, 5, 1, 5, 2, 5, 12, 5, 13, 5), 10);
        assertThat(trace.gaps()).isZero();
        assertThat(Warmth.of(trace.spells(), Ageing.usual()).hours()).isEqualTo(14);
    }

    @Test
    void no_reading_holds_longer_than_allowed() {
        Trace trace = Trace.of(readings(0, 5, 2, 5, 4, 5), .5);
        assertThat(trace.gaps()).isEqualTo(2);
        assertThat(trace.uncovered()).isEqualTo(3);
        assertThat(trace.spells()).extracting(Spell::hours).containsOnly(.5);
    }

    @Test
    void refuses_what_covers_no_time() {
        assertThatThrownBy(() -> Trace.of(List.of())).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Trace.of(readings(0, 5))).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Trace.of(readings(0, 5, 1, 5), 0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Trace.Reading(START, Double.NaN)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_readings_out_of_order_by_row() {
        assertThatThrownBy(() -> Trace.of(readings(0, 5, 2, 5, 1, 5)))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(2));
        assertThatThrownBy(() -> Trace.of(readings(0, 5, 0, 5))).isInstanceOf(NoAnswer.class);
    }

    private static List<Trace.Reading> readings(int... hoursAndCelsius) {
        List<Trace.Reading> readings = new ArrayList<>();
        for (int i = 0; i < hoursAndCelsius.length; i += 2) {
            readings.add(new Trace.Reading(START.plusSeconds(3600L * hoursAndCelsius[i]), hoursAndCelsius[i + 1]));
        }
        return readings;
    }
}

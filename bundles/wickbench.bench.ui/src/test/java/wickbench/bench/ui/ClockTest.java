package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.Method.Timing;

/** The clock on the wall and the clock of a strip. */
class ClockTest {
    private static final Instant NOW = Instant.parse("2026-10-25T12:00:00Z");
    private static final SiteClock SITE = new SiteClock(InstantSource.fixed(NOW), ZoneId.of("Europe/Vienna"));
    /** Common practice, no source: develop five minutes, read within the next; both ends stand. */
    private static final Timing TIMING = new Timing(
            Duration.ofMinutes(5), Duration.ofMinutes(1), Optional.empty(), Optional.empty(), Optional.empty());

    @Test
    void the_hour_that_an_autumn_night_repeats_needs_its_offset() {
        assertThatThrownBy(() -> SITE.past("2:30")).hasMessageContaining("repeat");
        assertThat(SITE.past("2026-10-25T02:30:00+02:00")).isEqualTo("2026-10-25T00:30:00Z");
        assertThat(SITE.past("2026-10-25T02:30:00+01:00")).isEqualTo("2026-10-25T01:30:00Z");
    }

    @Test
    void the_hour_that_a_spring_night_skips_does_not_exist() {
        assertThatThrownBy(() -> SITE.past("2026-03-29 02:30")).hasMessageContaining("skip");
    }

    @Test
    void this_moment_is_typed_as_people_type_it_and_read_back() {
        assertThat(SITE.nowTyped()).isEqualTo("13:00:00");
        assertThat(SITE.past(SITE.nowTyped())).isEqualTo(NOW);
    }

    @ParameterizedTest
    @CsvSource({
        "192, false, '3 min 12 s, developing: read in 1 min 48 s'",
        "299, true, '4 min 59 s, before the window'",
        "300, true, '5 min, inside the window'",
        "330, false, '5 min 30 s, READ NOW: 30 s left'",
        "360, true, '6 min, inside the window'",
        "361, true, '6 min 1 s, after the window'",
        "400, false, '6 min 40 s, the window is missed'"
    })
    void says_how_long_a_strip_has_run(long seconds, boolean read, String words) {
        Optional<Instant> started = Optional.of(NOW.minusSeconds(seconds));
        Optional<Instant> end = read ? Optional.of(NOW) : Optional.empty();

        assertThat(StripClock.of(started, end, NOW, TIMING).map(StripClock::words))
                .contains(words);
    }

    @Test
    void a_strip_that_is_not_started_has_no_clock() {
        assertThat(StripClock.of(Optional.empty(), Optional.empty(), NOW, TIMING))
                .isEmpty();
    }
}

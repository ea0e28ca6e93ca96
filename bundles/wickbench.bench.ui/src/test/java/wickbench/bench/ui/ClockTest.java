package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** The clock on the wall, as people type it. */
class ClockTest {
    private static final Instant NOW = Instant.parse("2026-10-25T12:00:00Z");
    private static final SiteClock SITE = new SiteClock(InstantSource.fixed(NOW), ZoneId.of("Europe/Vienna"));

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
}

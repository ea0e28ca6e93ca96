package wickbench.ledger.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Method.Timing;
import wickbench.api.reading.Times;

/** What is drawn of the times of a strip, and to which scale. */
class TimeTrackTest {
    private static final Instant START = Instant.parse("2026-03-10T08:00:00Z");
    /** Common practice, no source. */
    private static final Timing TIMING = new Timing(
            Duration.ofMinutes(5),
            Duration.ofMinutes(1),
            Optional.of(Duration.ofMinutes(20)),
            Optional.of(Duration.ofSeconds(60)),
            Optional.of(Duration.ofHours(3)));

    @Test
    void both_stretches_are_drawn_with_what_the_method_asks() {
        Times times = times(Optional.of(START.minusSeconds(1800)), Optional.of(START.minusSeconds(120)), 330);

        assertThat(TimeTrack.of(times, TIMING))
                .satisfiesExactly(
                        before -> {
                            assertThat(before.length()).isEqualTo(Duration.ofMinutes(30));
                            assertThat(before.bands())
                                    .extracting(TimeTrack.Band::from, TimeTrack.Band::to)
                                    .containsExactly(
                                            tuple(Duration.ZERO, Duration.ofMinutes(20)),
                                            tuple(Duration.ofMinutes(28), Duration.ofMinutes(30)));
                        },
                        strip -> {
                            assertThat(strip.marks())
                                    .extracting(TimeTrack.Mark::at)
                                    .containsExactly(Duration.ZERO, Duration.ofSeconds(330));
                            assertThat(strip.length()).isGreaterThan(Duration.ofMinutes(6));
                        });
    }

    @Test
    void a_strip_read_much_too_late_still_fits() {
        assertThat(TimeTrack.of(times(Optional.empty(), Optional.empty(), 3600), TIMING))
                .singleElement()
                .satisfies(strip -> assertThat(strip.length()).isGreaterThan(Duration.ofHours(1)));
    }

    @Test
    void nothing_is_drawn_of_what_was_not_stated() {
        Times none =
                new Times(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

        assertThat(TimeTrack.of(none, TIMING)).isEmpty();
    }

    private static Times times(Optional<Instant> out, Optional<Instant> extracted, int seconds) {
        return new Times(out, extracted, Optional.empty(), Optional.of(START), Optional.of(START.plusSeconds(seconds)));
    }
}

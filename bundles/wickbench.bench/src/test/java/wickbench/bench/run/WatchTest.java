package wickbench.bench.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wickbench.api.person.PersonId;

/** What rings, in which order, and what a clock that is moved does to it: nothing. */
class WatchTest {
    private final FakeTime time = new FakeTime("2026-03-02T06:00:00Z");
    private final List<Alarm> rung = new ArrayList<>();
    private final List<Duration> moves = new ArrayList<>();
    private RunState run;

    @BeforeEach
    void begin() {
        begin(List.of(
                TestStrips.timed(1, Optional.empty(), Duration.ofSeconds(300), Duration.ofSeconds(60), false),
                TestStrips.timed(2, Optional.empty(), Duration.ofSeconds(300), Duration.ofSeconds(40), false),
                TestStrips.timed(3, Optional.empty(), Duration.ZERO, Duration.ofSeconds(10), false)));
    }

    private void begin(List<RunStrip> strips) {
        run = RunState.begin(time.now(), new RunEvent.Begun(new UUID(1, 1), new PersonId("ana"), strips));
        new Watch(time, time, () -> run, rung::addAll, moves::add).begin();
    }

    private void start(int strip) {
        run = Moves.apply(run, time.now(), new RunEvent.Started(strip));
    }

    @Test
    void of_two_windows_that_open_together_the_one_that_closes_first_comes_first() {
        start(1);
        start(2);
        time.seconds(300);

        assertThat(rung).extracting(Alarm::strip).containsExactly(2, 1);
        assertThat(rung).extracting(Alarm::kind).containsOnly(Alarm.Kind.OPENS);
        assertThat(run.in(Phase.OPEN, time.now()))
                .extracting(StripState::number)
                .containsExactly(2, 1);
    }

    @Test
    void a_strip_that_needs_no_time_opens_at_once_and_is_missed_one_moment_after_its_end() {
        start(3);
        time.pass(Duration.ofMillis(250));
        assertThat(rung).extracting(Alarm::kind).containsExactly(Alarm.Kind.OPENS);

        time.pass(Duration.ofMillis(9750));
        assertThat(run.strip(3).orElseThrow().phase(time.now())).isEqualTo(Phase.OPEN);
        time.pass(Duration.ofMillis(1));
        assertThat(run.strip(3).orElseThrow().phase(time.now())).isEqualTo(Phase.MISSED);
        time.seconds(1);
        assertThat(rung)
                .extracting(Alarm::kind)
                .containsExactly(Alarm.Kind.OPENS, Alarm.Kind.CLOSES_SOON, Alarm.Kind.MISSED);
    }

    @Test
    void a_clock_set_back_or_years_ahead_moves_no_window_and_is_noted() {
        start(1);
        time.seconds(60);
        time.setWall(Duration.ofHours(-1));
        time.seconds(60);
        time.setWall(Duration.ofDays(27_000));
        time.seconds(179);
        assertThat(rung).isEmpty();

        time.seconds(1);

        assertThat(rung).extracting(Alarm::kind).containsExactly(Alarm.Kind.OPENS);
        assertThat(moves).containsExactly(Duration.ofHours(-1), Duration.ofDays(27_000));
    }

    @Test
    void what_a_closed_lid_made_late_rings_once_and_as_it_stands() {
        start(1);
        time.seconds(10);
        time.sleep(Duration.ofMinutes(20));
        time.seconds(1);

        assertThat(rung).extracting(Alarm::kind).containsExactly(Alarm.Kind.MISSED);
        assertThat(moves).isEmpty();
    }

    @Test
    void a_start_taken_back_rings_for_the_next_one_only() {
        start(1);
        time.seconds(100);
        run = Moves.apply(run, time.now(), new RunEvent.Undone(1));
        time.seconds(400);
        assertThat(rung).isEmpty();

        start(1);
        time.seconds(300);

        assertThat(rung).extracting(Alarm::kind).containsExactly(Alarm.Kind.OPENS);
    }
}

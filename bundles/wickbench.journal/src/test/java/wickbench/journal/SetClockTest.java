package wickbench.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Founding;
import wickbench.api.progress.Progress;
import wickbench.testing.Meets;

/** Clocks that are set back, run years ahead, jump or change to winter time: every entry is kept, in its order, and told. */
class SetClockTest {
    @TempDir
    Path folder;

    private SetHome home;
    private JournalFolder journal;

    @BeforeEach
    void found() {
        home = SetHome.at(folder, "2026-03-01T08:00:00Z");
        journal = Recorded.open(home);
        journal.found(new Founding(Recorded.STATION, ZoneId.of("Europe/Berlin"), OptionalLong.empty()));
    }

    @AfterEach
    void close() {
        journal.close();
    }

    private Entry recordedAt(String time, int number) {
        home.set(time);
        return journal.append(Recorded.notes(number, 1)).get(0);
    }

    @Test
    @Meets("21 CFR 117.305(d)")
    void a_clock_set_back_an_hour_is_told_and_nothing_is_refused() {
        recordedAt("2026-03-01T10:00:00Z", 0);
        assertThat(journal.status().notices()).isEmpty();
        recordedAt("2026-03-01T09:00:00Z", 1);
        recordedAt("2026-03-01T09:01:00Z", 2);
        assertThat(journal.status().notices())
                .singleElement()
                .asString()
                .startsWith("The clock was set back: entry station-1:2 was written at 2026-03-01T09:00:00Z,"
                        + " the one before it, station-1:1, at 2026-03-01T10:00:00Z.");
        holds(3);
    }

    @Test
    @Meets("ALCOA+ contemporaneous")
    void a_clock_years_ahead_and_set_right_again_is_told() {
        recordedAt("2099-01-01T00:00:00Z", 0);
        recordedAt("2026-03-01T09:00:00Z", 1);
        assertThat(journal.status().notices()).singleElement().asString().contains("2099-01-01");
        recordedAt("2026-03-01T09:00:01Z", 2);
        holds(3);
    }

    @Test
    void the_hour_that_comes_twice_keeps_its_order_by_instant_and_offset() {
        // Europe/Berlin left summer time on 25 October 2026 at 01:00 UTC (tz database)
        Entry summer = recordedAt("2026-10-25T00:30:00Z", 0);
        Entry winter = recordedAt("2026-10-25T01:30:00Z", 1);
        assertThat(summer.at().atOffset(summer.offset()).toLocalDateTime())
                .isEqualTo(winter.at().atOffset(winter.offset()).toLocalDateTime());
        assertThat(summer.offset().getId()).isEqualTo("+02:00");
        assertThat(winter.offset().getId()).isEqualTo("+01:00");
        assertThat(summer.at()).isBefore(winter.at());
        assertThat(journal.status().notices()).isEmpty();
        holds(2);
    }

    @Test
    void the_hour_that_does_not_come_makes_no_gap_between_instants() {
        // and went to summer time on 29 March 2026 at 01:00 UTC
        Entry before = recordedAt("2026-03-29T00:58:00Z", 0);
        Entry after = recordedAt("2026-03-29T01:02:00Z", 1);
        assertThat(before.offset().getId()).isEqualTo("+01:00");
        assertThat(after.offset().getId()).isEqualTo("+02:00");
        assertThat(after.at().minusSeconds(240)).isEqualTo(before.at());
        holds(2);
    }

    @Test
    void a_machine_that_slept_records_on() {
        recordedAt("2026-03-01T09:00:00Z", 0);
        recordedAt("2026-03-01T09:20:00Z", 1);
        assertThat(journal.status().notices()).isEmpty();
        holds(2);
    }

    private void holds(int notes) {
        List<Entry> entries = Recorded.entries(journal);
        assertThat(entries.stream().mapToLong(entry -> entry.ref().seq()))
                .containsExactly(LongStream.rangeClosed(0, notes).boxed().toArray(Long[]::new));
        assertThat(journal.verify(Progress.NONE).findings()).isEmpty();
        journal.close();
        journal = Recorded.open(home);
        assertThat(Recorded.entries(journal)).isEqualTo(entries);
    }
}

package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wickbench.api.method.Seen;
import wickbench.api.reading.Outcome;
import wickbench.ledger.Filter;
import wickbench.ledger.Week;
import wickbench.ledger.services.Strips.Plain;
import wickbench.testing.Meets;

/** Weeks on a real index, at a site whose clocks go back an hour within one of them (2026-04-05, tz database). */
class WeeksTest {
    private TestSite site;

    @BeforeEach
    void open() throws IOException {
        site = TestSite.made();
        record("2026-03-29T10:59:00Z", Seen.SEEN, Seen.NOT_SEEN);
        record("2026-03-29T11:00:00Z", Seen.SEEN, Seen.SEEN);
        record("2026-04-05T11:59:00Z", Seen.NOT_SEEN, Seen.NOT_SEEN);
        record("2026-04-05T12:00:00Z", Seen.SEEN, Seen.SEEN);
        record("2026-04-22T12:00:00Z", Seen.SEEN, Seen.NOT_SEEN);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    @Meets("ISO/IEC 17025 7.7.1")
    void a_week_begins_on_monday_at_midnight_of_the_site() {
        assertThat(site.results.weekly(Filter.ALL))
                .containsExactly(
                        new Week(LocalDate.parse("2026-03-23"), 1, 0, 0),
                        new Week(LocalDate.parse("2026-03-30"), 2, 1, 1),
                        new Week(LocalDate.parse("2026-04-06"), 1, 1, 0),
                        new Week(LocalDate.parse("2026-04-13"), 0, 0, 0),
                        new Week(LocalDate.parse("2026-04-20"), 1, 0, 0));
    }

    @Test
    void a_filter_narrows_the_weeks_down() {
        assertThat(site.results.weekly(Filter.ALL.withOutcome(Optional.of(Outcome.POSITIVE))))
                .containsExactly(
                        new Week(LocalDate.parse("2026-03-30"), 1, 1, 0),
                        new Week(LocalDate.parse("2026-04-06"), 1, 1, 0));
        Filter days =
                Filter.ALL.days(Optional.of(LocalDate.parse("2026-04-05")), Optional.of(LocalDate.parse("2026-04-06")));
        assertThat(site.results.weekly(days))
                .containsExactly(
                        new Week(LocalDate.parse("2026-03-30"), 1, 0, 1),
                        new Week(LocalDate.parse("2026-04-06"), 1, 1, 0));
        assertThat(site.results.weekly(Filter.ALL.withBatch(Optional.of("none"))))
                .isEmpty();
    }

    private void record(String at, Seen control, Seen test) {
        site.record(Plain.negative(at).seen(control, test).at(Instant.parse(at)).judged());
    }
}

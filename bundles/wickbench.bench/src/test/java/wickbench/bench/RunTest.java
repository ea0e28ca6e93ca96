package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.testing.Meets;
import wickbench.testing.Schemas;

/** A run from its first strip to its entry: what may happen to a strip, and when. */
class RunTest extends RunCase {
    @ParameterizedTest
    @CsvSource({"300000, NEGATIVE", "360000, NEGATIVE", "360001, INVALID", "361000, INVALID"})
    void a_strip_is_read_in_its_window_both_ends_included(long millis, Outcome outcome) {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.pass(Duration.ofMillis(millis));
        read(1, NEGATIVE);

        assertThat(recorded()).extracting(one -> one.verdict().outcome()).containsExactly(outcome);
    }

    @Test
    @Meets("21 CFR 11.10(f)")
    void nobody_reads_before_the_window_opens() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.pass(Duration.ofMillis(299_999));

        refused(() -> happened(new RunEvent.Looked(1)));
        assertThat(phase(1)).isEqualTo(Phase.DEVELOPING);
    }

    @Test
    @Meets("ALCOA+ complete")
    void a_missed_strip_stays_in_sight_and_becomes_invalid_with_its_sign() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(400);
        assertThat(phase(1)).isEqualTo(Phase.MISSED);
        refused(() -> happened(new RunEvent.Skipped(1)));
        refused(() -> happened(new RunEvent.Undone(1)));
        refused(() -> run.close().join());

        read(1, POSITIVE);

        RecordedReading kept = recorded().get(0);
        assertThat(kept.verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(kept.verdict().sign()).isTrue();
        assertThat(kept.verdict().findings()).extracting(Finding::rule).contains("time.read-late");
    }

    @Test
    void a_strip_that_nobody_looked_at_is_recorded_too() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(400);
        happened(new RunEvent.Lost(1));

        assertThat(recorded().get(0).verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(recorded().get(0).reading().times().read()).isEmpty();
        run.close().join();
    }

    @Test
    @Meets({"21 CFR 117.305(d)", "ALCOA+ original"})
    void the_first_answer_is_the_time_of_reading_however_long_the_rest_takes() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(355);
        happened(new RunEvent.Looked(1));
        time.seconds(120);
        happened(new RunEvent.Kept(1, ANA, NEGATIVE));

        assertThat(recorded().get(0).verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        refused(() -> happened(new RunEvent.Kept(1, ANA, POSITIVE)));
    }

    @Test
    @Meets("21 CFR 11.10(f)")
    void a_mistaken_start_can_be_taken_back_and_only_a_new_one_counts() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(200);
        happened(new RunEvent.Undone(1));
        assertThat(phase(1)).isEqualTo(Phase.WAITING);
        happened(new RunEvent.Started(1));
        time.seconds(120);

        assertThat(phase(1)).isEqualTo(Phase.DEVELOPING);
        refused(() -> happened(new RunEvent.Looked(1)));
        time.seconds(180);
        happened(new RunEvent.Looked(1));
        assertThat(run.state().strip(1).orElseThrow().undone()).hasSize(1);
    }

    @Test
    void shaking_is_timed_and_tells_when_the_extract_was_made() {
        begin(strip(1));
        refused(() -> happened(new RunEvent.Shaken(1)));
        happened(new RunEvent.Shaking(1));
        time.seconds(61);
        happened(new RunEvent.Shaken(1));
        happened(new RunEvent.Started(1));
        time.seconds(310);
        read(1, NEGATIVE);

        assertThat(recorded().get(0).reading().times().shaken()).contains(Duration.ofSeconds(61));
        assertThat(recorded().get(0).reading().times().extracted()).contains(Instant.parse("2026-03-02T06:00:00Z"));
    }

    @Test
    void one_more_strip_gets_the_next_number() {
        begin(strip(1), strip(2));
        happened(new RunEvent.Added(strip(1)));

        assertThat(run.state().strip(3)).isPresent();
        crash();
        assertThat(run.state().strip(3)).isPresent();
    }

    @Test
    void a_finished_run_leaves_no_file_behind_and_one_entry() throws IOException {
        begin(strip(1), strip(2));
        happened(new RunEvent.Skipped(2));
        happened(new RunEvent.Started(1));
        time.seconds(310);
        read(1, NEGATIVE);
        run.close().join();

        assertThat(runs.open()).isEmpty();
        assertThat(folder.resolve("runs")).isEmptyDirectory();
        assertThat(Schemas.published().errors("run.recorded-1.schema.json", lastBody()))
                .isEmpty();
        assertThat(lastBody()).contains("\"fate\":\"skipped\"").contains("\"fate\":\"read\"");
        refused(() -> happened(new RunEvent.Started(2)));
    }
}

package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.TestStrips;
import wickbench.testing.Meets;

/** A run through moved clocks, closed lids, crashes and power cuts. */
class RunSurvivalTest extends RunCase {
    @Test
    void a_clock_that_is_moved_bends_no_window_and_is_noted_in_the_entry_of_the_run() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(100);
        time.setWall(Duration.ofHours(-1));
        time.seconds(230);
        read(1, NEGATIVE);
        run.close().join();

        RecordedReading kept = recorded().get(0);
        assertThat(kept.verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(Duration.between(
                        kept.reading().times().started().orElseThrow(),
                        kept.reading().times().read().orElseThrow()))
                .isEqualTo(Duration.ofSeconds(330));
        assertThat(lastBody()).contains("\"clock_moved_ms\":[-3600000]").contains("\"elapsed_by\":\"steady-clock\"");
    }

    @Test
    void a_closed_lid_makes_the_strip_late() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(60);
        time.sleep(Duration.ofMinutes(20));

        assertThat(phase(1)).isEqualTo(Phase.MISSED);
        read(1, NEGATIVE);
        assertThat(recorded().get(0).verdict().outcome()).isEqualTo(Outcome.INVALID);
    }

    @Test
    @Meets("EU GMP Annex 11 16")
    void a_crash_brings_the_run_back_with_the_true_time_and_what_was_kept() {
        begin(strip(1), strip(2), strip(3));
        happened(new RunEvent.Started(1));
        time.seconds(10);
        happened(new RunEvent.Started(2));
        time.seconds(295);
        read(1, NEGATIVE);
        time.setWall(Duration.ofHours(5));

        crash();
        time.seconds(6);

        assertThat(phase(1)).isEqualTo(Phase.RECORDED);
        assertThat(phase(2)).isEqualTo(Phase.OPEN);
        assertThat(phase(3)).isEqualTo(Phase.WAITING);
        assertThat(run.state()
                        .strip(2)
                        .orElseThrow()
                        .elapsed(time.now())
                        .orElseThrow()
                        .span())
                .isEqualTo(Duration.ofSeconds(301));
        assertThat(run.state().resumed()).isEqualTo(1);
        assertThat(recorded()).hasSize(1);
    }

    @Test
    void a_machine_started_anew_tells_that_only_the_wall_knows() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(30);
        time.reboot(Duration.ofSeconds(280));
        crash();

        assertThat(phase(1)).isEqualTo(Phase.OPEN);
        assertThat(run.state()
                        .strip(1)
                        .orElseThrow()
                        .elapsed(time.now())
                        .orElseThrow()
                        .sure())
                .isFalse();
        read(1, NEGATIVE);
        run.close().join();
        assertThat(lastBody()).contains("\"elapsed_by\":\"wall-clock\"").contains("\"brought_back\":1");
    }

    @Test
    void a_wall_set_back_over_a_restart_leaves_the_strip_missed() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.reboot(Duration.ofHours(-2));
        crash();

        assertThat(phase(1)).isEqualTo(Phase.MISSED);
        read(1, NEGATIVE);
        assertThat(recorded().get(0).verdict().findings())
                .extracting(Finding::rule)
                .contains("time.not-stated");
    }

    @Test
    void a_line_torn_by_a_power_cut_was_never_said_to_be_kept() throws IOException {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        try (Stream<Path> files = Files.list(folder.resolve("runs"))) {
            Files.writeString(files.findFirst().orElseThrow(), "{\"at\":\"2026", StandardOpenOption.APPEND);
        }

        crash();

        assertThat(phase(1)).isEqualTo(Phase.DEVELOPING);
        crash();
        assertThat(run.state().resumed()).isEqualTo(2);
    }

    @Test
    void what_was_read_before_a_crash_and_not_recorded_is_recorded_after_it() {
        begin(TestStrips.strip(1, Optional.of(RunControl.LOW_POSITIVE)), strip(2));
        happened(new RunEvent.Started(1));
        happened(new RunEvent.Started(2));
        time.seconds(310);
        read(2, NEGATIVE);
        assertThat(phase(2)).isEqualTo(Phase.KEPT);

        crash();
        assertThat(phase(2)).isEqualTo(Phase.KEPT);
        read(1, POSITIVE);

        assertThat(recorded()).hasSize(2);
        assertThat(recorded()).extracting(one -> one.verdict().outcome()).contains(Outcome.NEGATIVE, Outcome.POSITIVE);
    }
}

package wickbench.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;
import wickbench.bench.run.FakeTime;
import wickbench.bench.run.OpenRuns;
import wickbench.bench.run.Phase;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.TestStrips;
import wickbench.reading.RecordedReadingJson;
import wickbench.testing.Schemas;

/** A run from its first strip to its entry, through crashes, closed lids and moved clocks. */
class RunTest {
    private static final PersonId ANA = new PersonId("ana");
    private static final PersonId BEN = new PersonId("ben");
    private static final Map<LineRole, Seen> NEGATIVE = TestStrips.lines(Seen.SEEN, Seen.SEEN, Seen.NOT_SEEN);
    private static final Map<LineRole, Seen> POSITIVE = TestStrips.lines(Seen.SEEN, Seen.SEEN, Seen.SEEN);
    private static final Map<LineRole, Seen> FAINT = TestStrips.lines(Seen.SEEN, Seen.SEEN, Seen.FAINT);

    @TempDir
    private Path folder;

    private final FakeTime time = new FakeTime("2026-03-02T06:00:00Z");
    private BenchHome home;
    private OpenRuns runs;
    private Run run;

    @BeforeEach
    void open() {
        home = new BenchHome(folder).withMethods();
        runs = runs();
    }

    @AfterEach
    void close() {
        runs.close();
        home.close();
    }

    private OpenRuns runs() {
        return new OpenRuns(
                folder.resolve("runs"),
                time,
                Runnable::run,
                time,
                home.door,
                (draft, run) -> home.journal.append(List.of(draft)),
                UUID::randomUUID);
    }

    private void begin(RunStrip... strips) {
        run = runs.begin(List.of(strips), ANA).join();
    }

    private static RunStrip strip(int number) {
        return TestStrips.strip(number, Optional.empty());
    }

    private void happened(RunEvent event) {
        run.happened(event, time.now()).join();
    }

    private void read(int strip, Map<LineRole, Seen> lines) {
        happened(new RunEvent.Looked(strip));
        happened(new RunEvent.Kept(strip, ANA, lines));
    }

    private Phase phase(int strip) {
        return run.state().strip(strip).orElseThrow().phase(time.now());
    }

    /** The program ends without a word, and another begins. */
    private void crash() {
        time.forgetWaiting();
        runs = runs();
        run = runs.open().get(0);
    }

    private List<RecordedReading> recorded() {
        List<RecordedReading> found = new ArrayList<>();
        entries().stream()
                .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                .forEach(entry -> found.add(
                        RecordedReadingJson.read("entry", entry.body()).orRefuse()));
        return found;
    }

    private List<Entry> entries() {
        List<Entry> all = new ArrayList<>();
        home.journal.read(home.journal.stations().get(0), 0, all::add);
        return all;
    }

    private static void refused(Runnable act) {
        assertThatThrownBy(act::run).hasRootCauseInstanceOf(Refusal.class);
    }

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
    void nobody_reads_before_the_window_opens() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.pass(Duration.ofMillis(299_999));

        refused(() -> happened(new RunEvent.Looked(1)));
        assertThat(phase(1)).isEqualTo(Phase.DEVELOPING);
    }

    @Test
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

    private String lastBody() {
        List<Entry> all = entries();
        assertThat(all.get(all.size() - 1).kind()).isEqualTo("run.recorded");
        return all.get(all.size() - 1).body().canonical();
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

    @Test
    void a_negative_waits_for_the_control_of_its_kit_and_falls_with_it() {
        begin(TestStrips.strip(1, Optional.of(RunControl.LOW_POSITIVE)), strip(2), strip(3));
        for (int strip = 1; strip <= 3; strip++) {
            happened(new RunEvent.Started(strip));
        }
        time.seconds(310);
        read(2, NEGATIVE);
        read(3, POSITIVE);
        assertThat(recorded()).extracting(one -> one.verdict().outcome()).containsExactly(Outcome.POSITIVE);

        read(1, NEGATIVE);

        assertThat(recorded())
                .filteredOn(one -> one.reading().sample().code().equals("S2"))
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.verdict().outcome()).isEqualTo(Outcome.INVALID);
                    assertThat(one.verdict().findings())
                            .extracting(Finding::rule)
                            .contains("control.failed");
                });
    }

    @Test
    void a_faint_line_asks_for_another_reader_who_makes_it_no_less_positive() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(310);
        read(1, FAINT);
        assertThat(phase(1)).isEqualTo(Phase.SECOND);
        assertThat(recorded()).isEmpty();
        refused(() -> happened(new RunEvent.Second(1, ANA, NEGATIVE)));

        happened(new RunEvent.Second(1, BEN, NEGATIVE));

        RecordedReading kept = recorded().get(0);
        assertThat(kept.verdict().outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(kept.verdict().findings()).extracting(Finding::rule).contains("reader.disagreement");
        assertThat(kept.reading().second().orElseThrow().reader()).isEqualTo(BEN);
    }

    @Test
    void when_nobody_comes_for_a_second_look_the_first_stands_and_the_run_says_so() {
        begin(strip(1));
        happened(new RunEvent.Started(1));
        time.seconds(310);
        read(1, FAINT);
        happened(new RunEvent.NoSecond(1));
        run.close().join();

        assertThat(recorded()).hasSize(1);
        assertThat(lastBody()).contains("\"second\":\"nobody-came\"");
    }

    @Test
    void a_strip_drawn_beforehand_asks_for_a_second_look_only_when_it_looks_negative() {
        begin(
                TestStrips.timed(1, Optional.empty(), Duration.ofMinutes(5), Duration.ofMinutes(1), true),
                TestStrips.timed(2, Optional.empty(), Duration.ofMinutes(5), Duration.ofMinutes(1), true));
        happened(new RunEvent.Started(1));
        happened(new RunEvent.Started(2));
        time.seconds(310);
        read(1, NEGATIVE);
        read(2, POSITIVE);

        assertThat(phase(1)).isEqualTo(Phase.SECOND);
        assertThat(phase(2)).isEqualTo(Phase.RECORDED);
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
}

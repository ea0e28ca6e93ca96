package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.bench.ui.BenchStrips.strip;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.journal.Entry;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.bench.run.Phase;
import wickbench.bench.run.RunStrip;
import wickbench.bench.run.StripState;
import wickbench.reading.RecordedReadingJson;
import wickbench.testing.Meets;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** The page in a window with gloves, haste and bad luck; keys come through the display. */
class RoughUseTest {
    private static final Duration FIVE_MINUTES = Duration.ofMinutes(5);
    private static final Duration ONE_MINUTE = Duration.ofMinutes(1);

    @TempDir
    private Path folder;

    private final CountingBell bell = new CountingBell();
    private TestHouse house;
    private TestDesk desk;
    private RunFlow flow;
    private BenchOperator operator;
    private Keyboard keys;

    @BeforeEach
    void found() {
        house = new TestHouse(folder).withMethods();
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    /** Opens the page on a run that has just begun with strips of these times. */
    private void open(RunStrip... strips) {
        house.doors().runs().begin(List.of(strips), TestHouse.ACTOR).join();
        page();
    }

    private void page() {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), bell));
        desk.shell().forceActive();
        page.shown();
        flow = page.flow();
        operator = new BenchOperator(desk, flow, house.time);
        keys = new Keyboard(desk);
        desk.await(() -> flow.stages().front() == Stage.CLOCK);
        desk.settle();
        flow.focus();
    }

    private StripState state(int strip) {
        return flow.hand().state().orElseThrow().strip(strip).orElseThrow();
    }

    private Phase phase(int strip) {
        return state(strip).phase(flow.hand().now());
    }

    private List<RecordedReading> recorded() {
        List<Entry> all = new ArrayList<>();
        house.journal().read(house.station(), 0, all::add);
        return all.stream()
                .filter(entry -> entry.is(RecordedReading.KIND, RecordedReading.VERSION))
                .map(entry -> RecordedReadingJson.read("entry", entry.body()).orRefuse())
                .toList();
    }

    @Test
    void a_key_held_down_answers_one_line_and_keeps_nothing() {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.seconds(305);
        operator.number(1);
        desk.await(() -> flow.stages().front() == Stage.READ
                && operator.reading().drawing().isFocusControl());

        keys.hold("s", 1500);

        assertThat(operator.reading().drawing().answers()).hasSize(1);
        keys.type("ss");
        desk.await(() -> operator.reading().drawing().complete());
        desk.await(() -> phase(1) == Phase.LOOKING);
        assertThat(recorded()).isEmpty();
    }

    @Test
    void enter_is_refused_until_every_line_is_answered() {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.seconds(305);
        operator.number(1);
        desk.await(() -> flow.stages().front() == Stage.READ
                && operator.reading().drawing().isFocusControl());
        keys.type("s");
        keys.enter();
        desk.settle();

        assertThat(operator.reading().said()).startsWith("Unanswered: ");
        assertThat(phase(1)).isEqualTo(Phase.LOOKING);
        assertThat(recorded()).isEmpty();
    }

    @Test
    @Meets("ISO/IEC 17025 7.4")
    void a_wrong_number_opens_nothing_and_says_why() {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE), strip(2, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.seconds(60);
        operator.start(2);
        house.time.seconds(245);
        desk.await(() -> !flow.band().words().isEmpty());

        operator.number(2);
        assertThat(operator.clock().said()).startsWith("Strip 2: developing 0:55");
        operator.number(9);
        assertThat(operator.clock().said()).isEqualTo("There is no strip 9 in this run.");
        assertThat(flow.stages().front()).isEqualTo(Stage.CLOCK);

        operator.read(1, "ssn");
        assertThat(recorded())
                .singleElement()
                .satisfies(one -> assertThat(one.reading().sample().code()).isEqualTo("s-1"));
    }

    @Test
    void of_two_windows_that_open_in_one_second_the_band_names_the_one_that_closes_first() throws IOException {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE), strip(2, FIVE_MINUTES, Duration.ofSeconds(30)));
        operator.start(1);
        operator.start(2);
        house.time.seconds(300);

        desk.await(() -> flow.band().words().startsWith("READ NOW: strip 2, 0:30 left; then 1"));
        desk.picture("run-read-now");
        assertThat(flow.band().calm()).isFalse();
        assertThat(bell.rung).contains(Bell.Sound.OPENS);
        keys.type(" ");
        desk.await(() -> flow.band().calm());
    }

    @Test
    void a_missed_strip_stays_in_sight_and_is_recorded_as_invalid_with_its_sign() throws IOException {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.seconds(420);
        desk.await(() -> flow.band().words().equals("Missed: strip 1"));
        desk.picture("run-missed");
        keys.key(SWT.F11);
        desk.settle();
        assertThat(phase(1)).isEqualTo(Phase.MISSED);

        operator.read(1, "sss");

        RecordedReading kept = recorded().get(0);
        assertThat(kept.verdict().outcome()).isEqualTo(Outcome.INVALID);
        assertThat(kept.verdict().sign()).isTrue();
        desk.picture("run-verdict-missed");
    }

    @Test
    void a_strip_without_developing_time_is_read_at_once_and_a_window_shorter_than_the_look_is_planned_for() {
        open(strip(1, Duration.ZERO, Duration.ofSeconds(5)));
        desk.await(() -> flow.timetable().plan().isPresent());
        assertThat(flow.timetable().plan().orElseThrow().rule().code()).isEqualTo("start");

        operator.start(1);
        desk.await(() -> flow.band().words().startsWith("READ NOW: strip 1"));
        operator.read(1, "ssn");

        assertThat(recorded()).hasSize(1);
    }

    @Test
    void a_photograph_let_fall_waits_for_its_reading_though_the_page_is_closed() throws Exception {
        Path photo = Files.writeString(folder.resolve("strip-1.jpg"), "not looked into");
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.pass(FIVE_MINUTES.plusSeconds(2));
        flow.stages().at(Stage.CLOCK).tick(flow.hand().now());
        operator.number(1);
        desk.await(() -> flow.stages().front() == Stage.READ);
        DroppedFiles.on(operator.reading().control(), photo.toString());
        desk.close();

        page();
        operator.read(1, "sss");
        desk.await(() -> house.kinds().contains("attachment.added"));
    }

    @Test
    void a_machine_that_cannot_be_heard_is_noticed_before_the_run() {
        bell.trouble = Optional.of(Bell.Trouble.MUTED);
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), bell));
        desk.shell().forceActive();
        page.shown();
        flow = page.flow();
        operator = new BenchOperator(desk, flow, house.time);
        operator.enter("hazelnut-rinse", "hz-1", "r-1", "kettle", 0);
        operator.plan();

        assertThat(((PlanStage) flow.stages().at(Stage.PLAN)).silent()).contains(Bell.Trouble.MUTED);
        assertThat(flow.stages().at(Stage.PLAN).control().isVisible()).isTrue();
    }

    @Test
    void the_page_closed_in_the_middle_opens_where_the_run_is() {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE), strip(2, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        desk.close();
        house.time.seconds(310);

        page();

        desk.await(() -> flow.band().words().startsWith("READ NOW: strip 1"));
        assertThat(phase(2)).isEqualTo(Phase.WAITING);
        operator.read(1, "ssn");
        assertThat(recorded()).hasSize(1);
    }

    @Test
    void a_clock_that_is_moved_changes_nothing_on_the_page() {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.seconds(290);
        house.time.moveWall(Duration.ofHours(-1));
        desk.await(() -> !flow.hand().state().orElseThrow().clockMoves().isEmpty());
        assertThat(phase(1)).isEqualTo(Phase.DEVELOPING);
        house.time.seconds(15);
        operator.read(1, "ssn");

        assertThat(recorded().get(0).verdict().outcome()).isEqualTo(Outcome.NEGATIVE);
    }

    @Test
    void five_hundred_strips_are_shown_and_the_next_one_starts() {
        open(IntStream.rangeClosed(1, 500)
                .mapToObj(number -> strip(number, FIVE_MINUTES, ONE_MINUTE))
                .toArray(RunStrip[]::new));

        assertThat(operator.clock().table().control().getItemCount()).isEqualTo(500);
        operator.start(1);
        assertThat(phase(1)).isEqualTo(Phase.DEVELOPING);
    }

    @Test
    void a_mistaken_start_is_taken_back_by_its_number() {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        keys.key(SWT.F7);
        desk.await(() -> operator.clock().said().equals(FlowWords.get("said.undo-which")));
        keys.type("1");
        keys.key(SWT.F7);

        desk.await(() -> phase(1) == Phase.WAITING);
        assertThat(state(1).undone()).hasSize(1);
    }

    @Test
    void a_second_reader_sees_no_answer_of_the_first() throws IOException {
        open(strip(1, FIVE_MINUTES, ONE_MINUTE));
        operator.start(1);
        house.time.seconds(305);
        operator.number(1);
        desk.await(() -> flow.stages().front() == Stage.READ
                && operator.reading().drawing().isFocusControl());
        keys.type("ssf");
        desk.await(() -> phase(1) == Phase.LOOKING);
        keys.enter();
        desk.await(() -> phase(1) == Phase.SECOND && operator.reading().second().asks());
        assertThat(operator.reading().drawing().answers()).isEmpty();
        desk.picture("run-second");

        keys.type("op-05");
        keys.enter();
        desk.await(() -> operator.reading().said().equals(FlowWords.get("second.same")));
        keys.type("op-07");
        keys.enter();
        desk.await(() -> operator.reading().drawing().isFocusControl());
        keys.type("ssn");
        desk.await(() -> operator.reading().said().equals(FlowWords.get("read.enter")));
        keys.enter();
        desk.await(() -> recorded().size() == 1);

        assertThat(recorded().get(0).verdict().outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(recorded().get(0).reading().second().orElseThrow().reader()).hasToString("op-07");
    }
}

package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Step;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Sample;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** What a run leaves to be done, on the real window and by keys. */
class OwedRunTest {
    private static final String PLACE = "rinse line 1";

    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private RunFlow flow;
    private BenchOperator operator;
    private Keyboard keys;

    @BeforeEach
    void found() {
        house = new TestHouse(folder).withMethods();
        open();
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private void open() {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.shown();
        flow = page.flow();
        operator = new BenchOperator(desk, flow, house.time);
        keys = new Keyboard(desk);
    }

    @Test
    void what_is_owed_is_in_sight_until_done_and_one_key_fills_in_a_run_for_it() throws IOException {
        runOneAboveTheRange();
        NextStage next = (NextStage) flow.at(Stage.NEXT);
        desk.await(() -> !next.owed().open().isEmpty());
        desk.picture("run-owed-next");
        assertThat(steps(next.owed())).contains(Step.HOLD, Step.BRACKET, Step.RE_CLEAN, Step.RE_TEST);

        keys.key(SWT.F4);
        desk.await(() -> flow.stage() == Stage.NEW && !flow.newRun().strips().isEmpty());
        desk.picture("run-owed-new");

        assertThat(flow.state()).isEmpty();
        assertThat(samples()).singleElement().satisfies(sample -> {
            assertThat(sample.code()).isEqualTo("r-1");
            assertThat(sample.place()).isEqualTo(PLACE);
            assertThat(sample.dilution()).isEqualByComparingTo(BigDecimal.TEN);
        });
        operator.plan();
        operator.begin();
        assertThat(flow.state().orElseThrow().strips()).hasSize(1);
    }

    @Test
    void a_place_is_sampled_again_only_after_its_clean_and_an_earlier_run_is_not_forgotten() {
        runOneAboveTheRange();
        operator.finish();
        desk.close();
        house.doors()
                .owed()
                .cleaned(
                        new CleanDone(
                                PLACE,
                                Optional.empty(),
                                "foam and rinse",
                                TestHouse.ACTOR,
                                house.time.now().wall().plusSeconds(60)),
                        TestHouse.ACTOR);

        open();
        desk.await(() -> flow.newRun().owedList().byStrip());
        assertThat(steps(flow.newRun().owedList()))
                .contains(Step.HOLD, Step.BRACKET, Step.RE_TEST)
                .doesNotContain(Step.RE_CLEAN);
        keys.key(SWT.F4);
        desk.await(() -> flow.newRun().strips().size() == 2);
        assertThat(samples())
                .anySatisfy(sample -> assertThat(sample.code()).isEqualTo("r-1"))
                .anySatisfy(sample -> {
                    assertThat(sample.code()).isEqualTo("r-1-R1");
                    assertThat(sample.place()).isEqualTo(PLACE);
                    assertThat(sample.reason()).contains(Reason.AFTER_CLEANING);
                });

        keys.key(SWT.F4);
        desk.await(() -> flow.newRun().said().equals(FlowWords.get("owed.taken", 0)));
        assertThat(flow.newRun().strips()).hasSize(2);
    }

    private void runOneAboveTheRange() {
        operator.enter("hazelnut-rinse", "hz-1", "r-1", PLACE, 0);
        operator.plan();
        operator.begin();
        operator.work(Map.of(1, "snn"));
        if (flow.stage() != Stage.NEXT) {
            keys.key(SWT.F12);
        }
        desk.await(() -> flow.stage() == Stage.NEXT
                && ((NextStage) flow.at(Stage.NEXT)).said().equals(FlowWords.get("next.over")));
    }

    private static List<Step> steps(OwedList list) {
        return list.open().stream().map(owed -> owed.item().step()).toList();
    }

    private List<Sample> samples() {
        return flow.newRun().strips().stream()
                .map(strip -> strip.unread().sample())
                .toList();
    }
}

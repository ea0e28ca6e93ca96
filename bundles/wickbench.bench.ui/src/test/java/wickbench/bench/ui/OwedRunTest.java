package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.owed.CleanDone;
import wickbench.api.owed.Step;
import wickbench.api.person.PersonId;
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
        open(TestHouse.ACTOR);
    }

    private void open(PersonId actor) {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(actor));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.shown();
        flow = page.flow();
        operator = new BenchOperator(desk, flow, house.time);
        keys = new Keyboard(desk);
        desk.settle();
        flow.focus();
    }

    @Test
    void what_is_owed_is_in_sight_until_done_and_one_key_fills_in_a_run_for_it() throws IOException {
        runOneAboveTheRange();
        NextStage next = (NextStage) flow.stages().at(Stage.NEXT);
        desk.await(() -> !next.look().open().isEmpty());
        desk.picture("run-owed-next");
        assertThat(steps(next.look().open())).contains(Step.HOLD, Step.BRACKET, Step.RE_CLEAN, Step.RE_TEST);

        keys.key(SWT.F4);
        desk.await(() ->
                flow.stages().front() == Stage.NEW && !flow.newRun().strips().isEmpty());
        desk.picture("run-owed-new");

        assertThat(flow.hand().state()).isEmpty();
        assertThat(samples()).singleElement().satisfies(sample -> {
            assertThat(sample.code()).isEqualTo("r-1");
            assertThat(sample.place()).isEqualTo(PLACE);
            assertThat(sample.dilution()).isEqualByComparingTo(BigDecimal.TEN);
        });
        operator.plan();
        operator.begin();
        assertThat(flow.hand().state().orElseThrow().strips()).hasSize(1);
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
        assertThat(steps(flow.newRun().owedList().open()))
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

        desk.settle();
        keys.key(SWT.F4);
        desk.await(() -> flow.newRun().said().equals(FlowWords.get("owed.taken", 0)));
        assertThat(flow.newRun().strips()).hasSize(2);
    }

    @Test
    void a_clean_is_told_and_neighbours_are_named_beside_what_is_owed() throws IOException {
        // the clock of the test's runs is ahead of the one by which a clean's end is judged
        house.time.moveWall(Duration.ofHours(-4));
        runOneAboveTheRange();
        NextStage next = (NextStage) flow.stages().at(Stage.NEXT);
        choose(next, Step.RE_CLEAN);
        keys.key(SWT.F5);
        keys.enter();
        assertThat(next.said()).isEqualTo(FlowWords.get("clean.no-procedure"));
        keys.type("foam and rinse");
        desk.picture("run-owed-clean");
        keys.enter();
        desk.await(() -> next.said().equals(FlowWords.get("clean.kept", PLACE)));
        desk.await(() -> !steps(next.look().open()).contains(Step.RE_CLEAN));

        choose(next, Step.RE_TEST);
        keys.key(SWT.F7);
        keys.type("hopper; belt 2");
        keys.enter();
        desk.await(() -> next.said().equals(FlowWords.get("neighbours.kept", "hopper, belt 2")));
        desk.await(() -> next.look().open().stream()
                .anyMatch(due -> due.item().missing().equals(List.of(PLACE, "hopper", "belt 2"))));
    }

    @Test
    void whoever_read_a_strip_decides_nothing_about_it_and_another_person_does() {
        runOneAboveTheRange();
        NextStage next = (NextStage) flow.stages().at(Stage.NEXT);
        choose(next, Step.HOLD);
        keys.key(SWT.F8);
        Shell refused = sheet();
        decide(refused, "all is well");
        desk.await(() -> words(refused).stream().anyMatch(text -> text.contains("somebody else decides")));
        refused.close();
        assertThat(steps(next.look().open())).contains(Step.HOLD);
        desk.shell().forceActive();
        next.owed().control().setFocus();
        operator.finish();
        desk.close();

        open(new PersonId("op-06"));
        desk.await(() -> flow.newRun().owedList().byStrip());
        keys.key(SWT.F12);
        desk.await(() -> flow.stages().front() == Stage.NEXT);
        NextStage all = (NextStage) flow.stages().at(Stage.NEXT);
        choose(all, Step.HOLD);
        keys.key(SWT.F8);
        Shell sheet = sheet();
        decide(sheet, "batch 17 was destroyed");
        desk.await(sheet::isDisposed);
        desk.await(() -> !steps(all.look().open()).contains(Step.HOLD));
    }

    /** Goes down to something owed by the arrow key. */
    private void choose(NextStage next, Step step) {
        desk.await(() -> steps(next.look().open()).contains(step));
        next.owed().control().setFocus();
        for (int i = 0; i < next.look().open().size(); i++) {
            if (next.owed().chosen().filter(due -> due.item().step() == step).isPresent()) {
                return;
            }
            keys.key(SWT.ARROW_DOWN);
        }
        assertThat(next.owed().chosen())
                .hasValueSatisfying(due -> assertThat(due.item().step()).isEqualTo(step));
    }

    private Shell sheet() {
        desk.await(() -> desk.shell().getShells().length == 1);
        return desk.shell().getShells()[0];
    }

    private void decide(Shell sheet, String reason) {
        all(sheet, Text.class).get(0).setText(reason);
        all(sheet, Button.class).get(1).notifyListeners(SWT.Selection, new Event());
    }

    private static List<String> words(Shell sheet) {
        return sheet.isDisposed()
                ? List.of()
                : all(sheet, Label.class).stream().map(Label::getText).toList();
    }

    private static <C extends Control> List<C> all(Composite parent, Class<C> type) {
        List<C> found = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (type.isInstance(child)) {
                found.add(type.cast(child));
            }
            if (child instanceof Composite inner) {
                found.addAll(all(inner, type));
            }
        }
        return found;
    }

    private void runOneAboveTheRange() {
        operator.enter("hazelnut-rinse", "hz-1", "r-1", PLACE, 0);
        operator.plan();
        operator.begin();
        operator.work(Map.of(1, "snn"));
        if (flow.stages().front() != Stage.NEXT) {
            keys.key(SWT.F12);
        }
        desk.await(() -> flow.stages().front() == Stage.NEXT
                && ((NextStage) flow.stages().at(Stage.NEXT)).said().equals(FlowWords.get("next.over")));
    }

    private static List<Step> steps(List<OwedDue> open) {
        return open.stream().map(owed -> owed.item().step()).toList();
    }

    private List<Sample> samples() {
        return flow.newRun().strips().stream()
                .map(strip -> strip.unread().sample())
                .toList();
    }
}

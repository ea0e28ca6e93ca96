package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.profile.ControlRule;
import wickbench.api.profile.Often;
import wickbench.api.reading.RunControl;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** Run controls that the site asks for, on the real window and by keys. */
class ControlsDueTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private RunFlow flow;
    private BenchOperator operator;
    private Keyboard keys;

    @BeforeEach
    void open() {
        house = new TestHouse(folder).withMethods();
        house.askForControls(new ControlRule(Map.of(RunControl.BLANK, Often.RUN, RunControl.LOW_POSITIVE, Often.DAY)));
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.shown();
        flow = page.flow();
        operator = new BenchOperator(desk, flow, house.time);
        keys = new Keyboard(desk);
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    @Test
    void what_is_missing_is_said_before_the_run_one_key_adds_it_and_todays_control_is_enough() {
        operator.enter("hazelnut-rinse", "hz-1", "r-1", "rinse line 1", 0);
        operator.plan();
        assertThat(said())
                .contains("blank control (hazelnut-rinse, hz-1), low positive control (hazelnut-rinse, hz-1)");

        keys.key(SWT.F3);
        desk.await(() -> flow.stages().front() == Stage.NEW);
        keys.key(SWT.F7);
        desk.await(() -> flow.newRun().strips().size() == 3);
        assertThat(flow.newRun().strips())
                .extracting(strip -> strip.unread().sample().control())
                .containsExactly(Optional.empty(), Optional.of(RunControl.BLANK), Optional.of(RunControl.LOW_POSITIVE));
        operator.plan();
        assertThat(said()).doesNotContain("Run controls");
        operator.begin();
        operator.work(Map.of(1, "ssn", 2, "ssn", 3, "sss"));
        operator.finish();

        operator.enter("hazelnut-rinse", "hz-1", "r-2", "rinse line 1", 0);
        operator.plan();
        assertThat(said()).contains("blank control (hazelnut-rinse, hz-1).").doesNotContain("low positive");
    }

    private String said() {
        StartCheck check = ((PlanStage) flow.stages().at(Stage.PLAN)).check().orElseThrow();
        return String.join(
                " ", check.lines().stream().map(StartCheck.Line::text).toList());
    }
}

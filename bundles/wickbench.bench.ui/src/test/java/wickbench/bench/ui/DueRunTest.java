package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;
import wickbench.api.planned.PlannedTest;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Sample;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** What a programme makes due comes to the bench as a run that is filled in. */
class DueRunTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private RunFlow flow;
    private BenchPart page;

    @BeforeEach
    void found() {
        house = new TestHouse(folder).withMethods();
        house.planned.add(key -> key.equals("L2-change@now") ? List.of(test(1), test(2)) : List.of());
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    private static PlannedTest test(int number) {
        return new PlannedTest(
                "L2-0302-0900-" + number,
                "L2 point " + number,
                Optional.of("L2"),
                new MethodId("hazelnut-rinse"),
                Reason.CHANGEOVER,
                Optional.of("milk \u2192 plain"));
    }

    private void open(Optional<PersonId> actor) {
        desk = new TestDesk(false, 100, 1280, 800, actor);
        page = desk.open(parent -> new BenchPart(parent, desk, house.doors(), new CountingBell()));
        desk.shell().forceActive();
        page.show("due:L2-change@now");
        page.shown();
        flow = page.flow();
        desk.settle();
    }

    @Test
    void every_sample_is_a_strip_and_one_key_plans_them() {
        open(Optional.of(TestHouse.ACTOR));
        flow.newRun().form().put(Item.LOT, "HZ-1");
        page.show("due:L2-change@now");
        desk.await(() -> flow.newRun().strips().size() == 2);
        assertThat(flow.newRun().strips())
                .extracting(strip -> strip.unread().sample())
                .extracting(Sample::code, Sample::place)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("L2-0302-0900-1", "L2 point 1"),
                        org.assertj.core.groups.Tuple.tuple("L2-0302-0900-2", "L2 point 2"));
        assertThat(flow.newRun().strips().get(0).unread().sample().reason()).contains(Reason.CHANGEOVER);
        assertThat(flow.newRun().said()).contains("Strips filled in for what is due: 2");
        flow.focus();
        new Keyboard(desk).key(SWT.F5);
        desk.await(() -> flow.stages().front() == Stage.PLAN);
    }

    @Test
    void without_a_lot_it_says_so_and_the_same_twice_adds_nothing() {
        open(Optional.of(TestHouse.ACTOR));
        desk.await(() -> flow.newRun().said().contains("without a method in force or a fit lot of their kit: 2"));
        assertThat(flow.newRun().strips()).isEmpty();
        flow.newRun().form().put(Item.LOT, "HZ-1");
        page.show("due:L2-change@now");
        desk.await(() -> flow.newRun().strips().size() == 2);
        page.show("due:L2-change@now");
        desk.settle();
        assertThat(flow.newRun().strips()).hasSize(2);
        page.show("due:nothing@now");
        desk.await(() -> flow.newRun().said().contains("Nothing of this is left"));
    }

    @Test
    void who_has_not_said_who_they_are_is_asked_first() {
        open(Optional.empty());
        desk.await(() -> flow.newRun().said().contains("Say who you are first"));
        flow.newRun().form().put(Item.LOT, "HZ-1");
        desk.signIn(TestHouse.ACTOR);
        desk.await(() -> flow.newRun().strips().size() == 2);
    }
}

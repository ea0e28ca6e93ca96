package wickbench.bench.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.bench.run.Run;
import wickbench.bench.run.RunEvent;
import wickbench.testing.ui.Keyboard;
import wickbench.testing.ui.TestDesk;

/** The page while a run is under way: where one is when one comes to it, and one more strip. */
class RunUnderWayTest {
    @TempDir
    private Path folder;

    private TestHouse house;
    private TestDesk desk;
    private Run run;

    @BeforeEach
    void begin() {
        house = new TestHouse(folder).withMethods();
        run = house.doors()
                .runs()
                .begin(List.of(BenchStrips.strip(1, Duration.ofMinutes(5), Duration.ofMinutes(1))), TestHouse.ACTOR)
                .join();
    }

    @AfterEach
    void close() {
        desk.close();
        house.close();
    }

    /** Opens the page by a link, which comes before the run is known. */
    private RunFlow open(Optional<String> link) {
        desk = new TestDesk(false, 100, 1280, 800, Optional.of(TestHouse.ACTOR));
        BenchPart page = desk.open(parent -> {
            BenchPart made = new BenchPart(parent, desk, house.doors(), new CountingBell());
            link.ifPresent(made::show);
            return made;
        });
        desk.shell().forceActive();
        page.shown();
        desk.await(() -> page.flow().hand().state().isPresent());
        desk.settle();
        return page.flow();
    }

    @Test
    void a_strip_asked_for_before_the_run_is_known_is_opened_once_it_is() {
        RunFlow flow = open(Optional.of("strip:1"));

        assertThat(flow.stages().front()).isEqualTo(Stage.READ);
        assertThat(((ReadStage) flow.stages().at(Stage.READ)).drawing().editable())
                .isTrue();
    }

    @Test
    void a_strip_that_the_run_does_not_have_leads_to_the_run() {
        RunFlow flow = open(Optional.of("strip:7"));
        assertThat(flow.stages().front()).isEqualTo(Stage.CLOCK);
        flow.show("strip:1");
        assertThat(flow.stages().front()).isEqualTo(Stage.READ);
        flow.show("strip:0");
        assertThat(flow.stages().front()).isEqualTo(Stage.CLOCK);
    }

    @Test
    void a_stage_asked_for_comes_to_the_front() {
        assertThat(open(Optional.of("plan")).stages().front()).isEqualTo(Stage.PLAN);
    }

    @Test
    void a_run_of_which_every_strip_is_over_goes_on_with_what_is_owed() {
        run.happened(new RunEvent.Skipped(1), run.now()).join();

        assertThat(open(Optional.empty()).stages().front()).isEqualTo(Stage.NEXT);
    }

    @Test
    void what_is_due_waits_while_a_run_is_under_way() {
        RunFlow flow = open(Optional.empty());

        assertThat(flow.show("due:L2-change@now")).isTrue();

        assertThat(desk.said()).contains(FlowWords.get("owed.underway"));
        assertThat(flow.stages().front()).isEqualTo(Stage.CLOCK);
        assertThat(flow.newRun().strips()).isEmpty();
    }

    @Test
    void one_more_strip_joins_the_run_under_way_and_leads_back_to_it() {
        RunFlow flow = open(Optional.empty());
        Keyboard keys = new Keyboard(desk);
        keys.key(SWT.F8);
        desk.await(() -> flow.stages().front() == Stage.NEW);
        EntryForm form = flow.newRun().form();
        form.put(Item.METHOD, "hazelnut-rinse");
        form.put(Item.LOT, "hz-1");
        form.put(Item.SAMPLE, "r-2");
        form.put(Item.PLACE, "rinse line 1");
        assertThat(flow.newRun().said()).isEqualTo(FlowWords.get("new.enter-one"));

        keys.enter();

        desk.await(() -> flow.stages().front() == Stage.CLOCK);
        assertThat(flow.hand().state().orElseThrow().strips())
                .extracting(strip -> strip.strip().unread().sample().code())
                .containsExactly("s-1", "r-2");
        assertThat(flow.newRun().strips()).isEmpty();
    }
}

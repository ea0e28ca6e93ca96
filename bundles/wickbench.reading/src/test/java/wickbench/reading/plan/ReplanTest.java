package wickbench.reading.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.reading.plan.Strips.seconds;
import static wickbench.reading.plan.Strips.strip;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReplanTest {

    @Test
    void a_strip_whose_window_has_passed_is_named_as_lost_and_the_others_are_read() {
        StartedStrip passed = new StartedStrip(strip("1", 30, 300, 60, 15), seconds(-361));
        StartedStrip closing = new StartedStrip(strip("2", 30, 300, 60, 15), seconds(-345));
        PlanRequest request = request(List.of(passed, closing), List.of(strip("3", 30, 300, 60, 15)), 0);

        RunPlan plan = RunPlanner.plan(request);

        assertThat(plan.lost()).containsExactly(passed);
        assertThat(plan.strips()).extracting(each -> each.strip().name()).containsExactly("2", "3");
        assertThat(plan.strips().get(0).readStart()).isEqualTo(Duration.ZERO);
        assertThat(PlanCheck.faults(request, plan)).isEmpty();
    }

    @Test
    void of_strips_that_close_together_as_many_as_possible_are_saved() {
        // each alone could be read; hands are free too late for all four
        List<StartedStrip> running = IntStream.rangeClosed(1, 4)
                .mapToObj(i -> new StartedStrip(strip("" + i, 30, 300, 60, 15), seconds(-310)))
                .toList();

        RunPlan plan = RunPlanner.plan(request(running, List.of(), 15));

        assertThat(plan.lost()).hasSize(2);
        assertThat(plan.strips()).hasSize(2);
    }

    @Test
    void what_waits_is_put_off_where_a_running_strip_needs_the_time() {
        StartedStrip running = new StartedStrip(strip("1", 30, 300, 20, 15), seconds(-290));
        PlanRequest request = request(List.of(running), List.of(strip("2", 30, 300, 60, 15)), 0);

        RunPlan plan = RunPlanner.plan(request);

        assertThat(plan.strips().get(0).readStart()).isEqualTo(seconds(10));
        assertThat(plan.strips().get(1).dipStart()).isEqualTo(seconds(25));
        assertThat(plan.optimal()).isTrue();
    }

    @Test
    void fractions_of_a_second_are_kept() {
        StartedStrip running = new StartedStrip(strip("1", 30, 300, 60, 15), Duration.ofMillis(-100_250));

        RunPlan plan = RunPlanner.plan(request(List.of(running), List.of(), 0));

        assertThat(plan.strips().get(0).readStart()).isEqualTo(Duration.ofMillis(199_750));
        assertThat(plan.total()).isEqualTo(Duration.ofMillis(214_750));
    }

    @Test
    void the_first_aim_alone_gives_the_same_total_and_claims_no_more() {
        PlanRequest waits = Strips.request(Strips.equal(12, 30, 300, 60, 15), WindowRule.START);
        PlanRequest none = Strips.request(Strips.equal(4, 30, 300, 60, 15), WindowRule.START);

        RunPlan shortest = RunPlanner.shortest(waits);

        assertThat(shortest.total()).isEqualTo(RunPlanner.plan(waits).total());
        assertThat(shortest.optimal()).isTrue();
        assertThat(shortest.refined()).isFalse();
        assertThat(RunPlanner.shortest(none).refined()).isTrue();
    }

    @Test
    void nothing_to_do_is_a_plan_of_no_time() {
        StartedStrip passed = new StartedStrip(strip("1", 30, 300, 60, 15), seconds(-900));
        PlanRequest request = request(List.of(passed), List.of(), 5);

        RunPlan plan = RunPlanner.plan(request);

        assertThat(plan.lost()).containsExactly(passed);
        assertThat(plan.total()).isZero();
        assertThat(PlanCheck.faults(request, plan)).isEmpty();
    }

    @Test
    void hundreds_of_strips_are_planned_with_a_stated_gap() {
        PlanRequest request = Strips.request(Strips.equal(500, 30, 300, 60, 15), WindowRule.END);

        RunPlan plan = RunPlanner.plan(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(plan.optimal()).isFalse();
        assertThat(plan.gap()).isPositive().isLessThan(plan.total().dividedBy(50));
    }

    @Test
    void the_longest_run_is_planned_on_a_thread_with_a_small_stack() throws InterruptedException {
        PlanRequest request =
                Strips.request(Strips.and(Strips.equal(500, 30, 300, 60, 15), 500, 30, 600, 60, 15), WindowRule.END);
        AtomicReference<RunPlan> plan = new AtomicReference<>();

        Thread small = new Thread(null, () -> plan.set(RunPlanner.plan(request)), "small stack", 256 * 1024);
        small.start();
        small.join();

        assertThat(plan.get()).isNotNull();
        assertThat(PlanCheck.faults(request, plan.get())).isEmpty();
    }

    private static PlanRequest request(List<StartedStrip> running, List<PlanStrip> waiting, int freeFrom) {
        return PlanRequest.of("test", new PlanRequest(running, waiting, WindowRule.END, seconds(freeFrom)))
                .orRefuse();
    }
}

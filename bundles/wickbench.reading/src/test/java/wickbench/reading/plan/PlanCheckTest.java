package wickbench.reading.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.reading.plan.Strips.seconds;
import static wickbench.reading.plan.Strips.strip;

import java.time.Duration;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import wickbench.reading.plan.PlanFault.Kind;

/** A plan with one thing wrong gets exactly that fault; the right one gets none. */
class PlanCheckTest {
    private static final PlanStrip ONE = strip("1", 30, 300, 60, 15);
    private static final PlanStrip TWO = strip("2", 30, 300, 60, 15);
    private static final StartedStrip RUNS = new StartedStrip(strip("3", 30, 300, 60, 15), seconds(-300));
    private static final PlanRequest REQUEST =
            new PlanRequest(List.of(RUNS), List.of(ONE, TWO), WindowRule.END, seconds(10));

    private static final PlannedStrip FIRST = new PlannedStrip(ONE, seconds(25), seconds(55), seconds(355), false);
    private static final PlannedStrip SECOND = new PlannedStrip(TWO, seconds(55), seconds(85), seconds(385), false);
    private static final PlannedStrip THIRD =
            new PlannedStrip(RUNS.strip(), seconds(-330), seconds(-300), seconds(10), true);

    @Test
    void a_right_plan_has_no_fault() {
        assertThat(kinds(plan(THIRD, FIRST, SECOND))).isEmpty();
    }

    @Test
    void a_strip_left_out_or_planned_twice() {
        assertThat(kinds(plan(THIRD, FIRST))).containsExactly(Kind.NOT_ONCE);
        assertThat(kinds(plan(THIRD, FIRST, SECOND, SECOND))).contains(Kind.NOT_ONCE);
    }

    @Test
    void a_waiting_strip_is_never_lost() {
        RunPlan plan = plan(THIRD, FIRST);
        RunPlan lost = new RunPlan(
                plan.strips(),
                List.of(new StartedStrip(TWO, seconds(0))),
                plan.total(),
                plan.bound(),
                true,
                plan.lateness(),
                plan.leastSlack(),
                true);
        assertThat(kinds(lost)).containsExactly(Kind.WRONGLY_LOST);
    }

    @Test
    void a_running_strip_keeps_its_start() {
        PlannedStrip moved = new PlannedStrip(RUNS.strip(), seconds(-320), seconds(-290), seconds(10), true);
        assertThat(kinds(plan(moved, FIRST, SECOND))).containsExactly(Kind.START_MOVED);
    }

    @Test
    void work_before_hands_are_free() {
        PlannedStrip soon = new PlannedStrip(RUNS.strip(), seconds(-330), seconds(-300), seconds(9), true);
        assertThat(kinds(plan(soon, FIRST, SECOND))).containsExactly(Kind.TOO_SOON);
    }

    @Test
    void two_blocks_over_each_other() {
        assertThat(kinds(plan(THIRD, FIRST, moved(SECOND, -1)))).containsExactly(Kind.OVERLAP);
    }

    @Test
    void hands_on_work_of_another_length() {
        PlannedStrip hasty = new PlannedStrip(TWO, seconds(56), seconds(85), seconds(385), false);
        assertThat(kinds(plan(THIRD, FIRST, hasty))).containsExactly(Kind.HANDS_OFF);
    }

    @Test
    void looks_before_and_after_the_window() {
        assertThat(kinds(plan(THIRD, FIRST, read(SECOND, 384)))).containsExactly(Kind.EARLY);
        assertThat(kinds(plan(THIRD, FIRST, read(SECOND, 430)))).isEmpty();
        assertThat(kinds(plan(THIRD, FIRST, read(SECOND, 431)))).containsExactly(Kind.LATE);
    }

    @Test
    void sums_that_the_strips_do_not_give() {
        RunPlan plan = plan(THIRD, FIRST, SECOND);
        assertThat(kinds(with(plan, plan.total().plusMillis(1), plan.bound(), plan.lateness())))
                .containsExactly(Kind.SUM);
        assertThat(kinds(with(plan, plan.total(), plan.total().plusMillis(1), plan.lateness())))
                .containsExactly(Kind.SUM);
        assertThat(kinds(with(plan, plan.total(), plan.bound(), plan.lateness().plusMillis(1))))
                .containsExactly(Kind.SUM);
    }

    private static RunPlan with(RunPlan plan, Duration total, Duration bound, Duration lateness) {
        return new RunPlan(plan.strips(), plan.lost(), total, bound, true, lateness, plan.leastSlack(), true);
    }

    private static PlannedStrip moved(PlannedStrip strip, int by) {
        UnaryOperator<Duration> move = at -> at.plusSeconds(by);
        return new PlannedStrip(
                strip.strip(),
                move.apply(strip.dipStart()),
                move.apply(strip.started()),
                move.apply(strip.readStart()),
                false);
    }

    private static PlannedStrip read(PlannedStrip strip, int at) {
        return new PlannedStrip(strip.strip(), strip.dipStart(), strip.started(), seconds(at), false);
    }

    private static RunPlan plan(PlannedStrip... strips) {
        Duration total = List.of(strips).stream()
                .map(PlannedStrip::readEnd)
                .reduce(Duration.ZERO, (a, b) -> a.compareTo(b) > 0 ? a : b);
        Duration lateness = List.of(strips).stream().map(PlannedStrip::lateness).reduce(Duration.ZERO, Duration::plus);
        return new RunPlan(List.of(strips), List.of(), total, Duration.ZERO, true, lateness, Duration.ZERO, true);
    }

    private static List<Kind> kinds(RunPlan plan) {
        return PlanCheck.faults(REQUEST, plan).stream().map(PlanFault::kind).toList();
    }
}

package wickbench.reading.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static wickbench.reading.plan.Strips.seconds;
import static wickbench.reading.plan.Strips.strip;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class PlanLawsTest {

    /** What every plan of the strips, looked at one by one, leaves as the best. */
    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void no_plan_of_few_strips_is_better(@ForAll("few") PlanRequest request) {
        EveryPlan.Best best = EveryPlan.of(request);

        RunPlan plan = RunPlanner.plan(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(plan.optimal()).isTrue();
        assertThat(plan.refined()).isTrue();
        assertThat(plan.total()).isEqualTo(seconds(best.total()));
        assertThat(plan.lateness()).isEqualTo(seconds(best.worth().lateness()));
        assertThat(plan.leastSlack()).isEqualTo(seconds(best.worth().slack()));
    }

    /** As many strips that run are saved as in any order of looks, and no plan of those and what waits is better. */
    @Property(tries = 400, edgeCases = EdgeCasesMode.NONE)
    void no_plan_around_strips_that_run_is_better(@ForAll("begun") PlanRequest request) {
        RunPlan plan = RunPlanner.plan(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(request.running().size() - plan.lost().size()).isEqualTo(EveryLook.most(request));
        List<StartedStrip> saved = new ArrayList<>(request.running());
        saved.removeAll(plan.lost());
        assertThat(plan.refined()).isTrue();
        if (!plan.strips().isEmpty()) {
            EveryPlan.Best best =
                    EveryPlan.of(new PlanRequest(saved, request.toStart(), request.rule(), request.freeFrom()));
            assertThat(plan.total()).isEqualTo(seconds(best.total()));
            assertThat(plan.lateness()).isEqualTo(seconds(best.worth().lateness()));
            assertThat(plan.leastSlack()).isEqualTo(seconds(best.worth().slack()));
        }
    }

    /** Times that have a common part, as those of kits do: some of the rules count in multiples of it. */
    @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
    void no_plan_of_coarse_times_is_better(@ForAll("coarse") PlanRequest request) {
        EveryPlan.Best best = EveryPlan.of(request);

        RunPlan plan = RunPlanner.plan(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(plan.refined()).isTrue();
        assertThat(plan.total()).isEqualTo(seconds(best.total()));
        assertThat(plan.lateness()).isEqualTo(seconds(best.worth().lateness()));
        assertThat(plan.leastSlack()).isEqualTo(seconds(best.worth().slack()));
    }

    @Property(tries = 1500, edgeCases = EdgeCasesMode.NONE)
    void every_plan_can_be_done(@ForAll("runs") PlanRequest request) {
        RunPlan plan = RunPlanner.quickly(request);

        assertThat(PlanCheck.faults(request, plan)).isEmpty();
        assertThat(plan.bound()).isLessThanOrEqualTo(plan.total());
        assertThat(plan.gap()).isEqualTo(plan.total().minus(plan.bound()));
        assertThat(plan.optimal()).isEqualTo(plan.gap().isZero());
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void the_same_request_gets_the_same_plan(@ForAll("runs") PlanRequest request) {
        assertThat(RunPlanner.quickly(request)).isEqualTo(RunPlanner.quickly(request));
    }

    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void more_effort_gives_no_worse_plan(@ForAll("few") PlanRequest request) {
        assertThat(RunPlanner.plan(request).total())
                .isLessThanOrEqualTo(RunPlanner.quickly(request).total());
    }

    /** A looser rule leaves at least the plans of the tighter one. */
    @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
    void a_tighter_rule_gives_no_shorter_plan(@ForAll("few") PlanRequest request) {
        Duration loose = total(request, WindowRule.START);
        Duration end = total(request, WindowRule.END);

        assertThat(loose).isLessThanOrEqualTo(end);
        assertThat(end).isLessThanOrEqualTo(total(request, WindowRule.EXACT));
    }

    /** Of strips that run and can be read when planned by themselves, all are saved whatever waits beside them. */
    @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
    void strips_that_wait_cost_no_running_one(@ForAll("runs") PlanRequest request) {
        PlanRequest alone = new PlanRequest(request.running(), List.of(), request.rule(), request.freeFrom());

        assertThat(RunPlanner.quickly(request).lost())
                .isEqualTo(RunPlanner.quickly(alone).lost());
    }

    private static Duration total(PlanRequest request, WindowRule rule) {
        return RunPlanner.plan(Strips.request(request.toStart(), rule)).total();
    }

    @Provide
    Arbitrary<PlanRequest> few() {
        Arbitrary<PlanStrip> strips = Combinators.combine(ints(1, 3), ints(1, 9), ints(2, 4), ints(1, 2))
                .as((hands, develop, window, look) -> strip("1", hands, develop, window, look));
        Arbitrary<List<PlanStrip>> kinds = strips.list().ofMinSize(1).ofMaxSize(3);
        return Combinators.combine(kinds, ints(0, 2).list().ofSize(4), ints(1, 4), Arbitraries.of(WindowRule.values()))
                .as((some, which, count, rule) -> Strips.request(numbered(some, which, count), rule));
    }

    @Provide
    Arbitrary<PlanRequest> coarse() {
        return Combinators.combine(few(), ints(2, 4))
                .as((run, times) -> Strips.request(
                        run.toStart().stream()
                                .limit(3)
                                .map(strip -> new PlanStrip(
                                        strip.name(),
                                        strip.handsOn().multipliedBy(times),
                                        strip.develop().multipliedBy(times),
                                        strip.window().multipliedBy(times),
                                        strip.look().multipliedBy(times)))
                                .toList(),
                        run.rule()));
    }

    @Provide
    Arbitrary<PlanRequest> begun() {
        return Combinators.combine(few(), ints(-12, 0).list().ofMaxSize(4), ints(0, 3))
                .as((run, started, free) -> {
                    List<PlanStrip> strips = run.toStart();
                    List<StartedStrip> running = new ArrayList<>();
                    for (int i = 0; i < Math.min(strips.size(), started.size()); i++) {
                        running.add(new StartedStrip(strips.get(i), seconds(started.get(i))));
                    }
                    List<PlanStrip> waiting = strips.subList(running.size(), strips.size());
                    return PlanRequest.of("test", new PlanRequest(running, waiting, run.rule(), seconds(free)))
                            .orRefuse();
                });
    }

    @Provide
    Arbitrary<PlanRequest> runs() {
        Arbitrary<PlanStrip> strips = Combinators.combine(ints(5, 60), ints(60, 900), ints(40, 180), ints(5, 40))
                .as((hands, develop, window, look) -> strip("1", hands, develop, window, look));
        Arbitrary<List<PlanStrip>> kinds = strips.list().ofMinSize(1).ofMaxSize(3);
        return Combinators.combine(
                        kinds,
                        ints(0, 2).list().ofSize(16),
                        ints(1, 16),
                        ints(-1000, 0).list().ofMaxSize(8),
                        ints(0, 60),
                        Arbitraries.of(WindowRule.values()))
                .as(PlanLawsTest::run);
    }

    private static PlanRequest run(
            List<PlanStrip> kinds,
            List<Integer> which,
            int count,
            List<Integer> started,
            int freeFrom,
            WindowRule rule) {
        List<PlanStrip> strips = numbered(kinds, which, count);
        List<StartedStrip> running = new ArrayList<>();
        for (int i = 0; i < Math.min(count, started.size()); i++) {
            running.add(new StartedStrip(strips.get(i), seconds(started.get(i))));
        }
        return PlanRequest.of(
                        "test",
                        new PlanRequest(running, strips.subList(running.size(), count), rule, seconds(freeFrom)))
                .orRefuse();
    }

    private static List<PlanStrip> numbered(List<PlanStrip> kinds, List<Integer> which, int count) {
        List<PlanStrip> strips = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            PlanStrip kind = kinds.get(which.get(i) % kinds.size());
            strips.add(
                    new PlanStrip(Integer.toString(i + 1), kind.handsOn(), kind.develop(), kind.window(), kind.look()));
        }
        return strips;
    }

    private static Arbitrary<Integer> ints(int from, int to) {
        return Arbitraries.integers().between(from, to);
    }
}

package wickbench.bench.run;

import java.time.Duration;
import java.util.List;
import wickbench.api.check.Checked;
import wickbench.reading.plan.PlanRequest;
import wickbench.reading.plan.PlanStrip;
import wickbench.reading.plan.RunPlan;
import wickbench.reading.plan.RunPlanner;
import wickbench.reading.plan.StartedStrip;
import wickbench.reading.plan.WindowRule;

/**
 * Plans what is left of a run around the strips that have been started.
 *
 * @param handsOn work that ends with the start of a strip
 * @param look how long reading takes
 */
public record RunPlanning(Duration handsOn, Duration look) {
    /** So many starts are planned at once: what lies an hour ahead is planned again before it comes, and planning takes long. */
    private static final int AT_ONCE = 24;

    /** A strip that needs no time still starts before it is read. */
    private static final Duration LEAST = Duration.ofMillis(1);

    /** Common practice, no source; a person at the bench sets their own. */
    public static final RunPlanning USUAL = new RunPlanning(Duration.ofSeconds(45), Duration.ofSeconds(20));

    public RunPlanning {
        if (handsOn.compareTo(LEAST) < 0 || look.compareTo(LEAST) < 0) {
            throw new IllegalArgumentException("expected hands-on and look above 0 s");
        }
    }

    /**
     * A plan as it was found.
     *
     * @param at the moment that its times count from
     * @param rule what lies inside the windows: the whole look, or its beginning where some window is shorter than the look
     * @param later how many strips are planned once others have started
     */
    public record Planned(Moment at, RunPlan plan, WindowRule rule, int later) {}

    /** Plans a run that has not begun. */
    public Checked<Planned> plan(List<RunStrip> strips, Moment now) {
        return plan(List.of(), strips.stream().map(this::task).toList(), Duration.ZERO, now);
    }

    /** Plans what is left, no new start within {@code rest}; may take a moment with many strips. */
    public Checked<Planned> plan(RunState run, Duration rest, Moment now) {
        List<StartedStrip> running = run.strips().stream()
                .filter(strip -> strip.phase(now) == Phase.DEVELOPING || strip.phase(now) == Phase.OPEN)
                .map(strip -> new StartedStrip(
                        task(strip.strip()),
                        strip.elapsed(now).orElseThrow().span().negated()))
                .toList();
        List<PlanStrip> waiting = run.in(Phase.WAITING, now).stream()
                .map(strip -> task(strip.strip()))
                .toList();
        return plan(running, waiting, rest, now);
    }

    private static Checked<Planned> plan(List<StartedStrip> running, List<PlanStrip> all, Duration rest, Moment now) {
        List<PlanStrip> waiting = all.subList(0, Math.min(AT_ONCE, all.size()));
        int later = all.size() - waiting.size();
        Checked<PlanRequest> whole = PlanRequest.of("run", new PlanRequest(running, waiting, WindowRule.END, rest));
        if (whole instanceof Checked.Good<PlanRequest> good) {
            return Checked.good(new Planned(now, RunPlanner.plan(good.value()), WindowRule.END, later));
        }
        return PlanRequest.of("run", new PlanRequest(running, waiting, WindowRule.START, rest))
                .map(request -> new Planned(now, RunPlanner.plan(request), WindowRule.START, later));
    }

    private PlanStrip task(RunStrip strip) {
        Duration develop = strip.develop().compareTo(LEAST) < 0 ? LEAST : strip.develop();
        return new PlanStrip(Integer.toString(strip.number()), handsOn, develop, strip.window(), look);
    }
}

package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Plans a run: the shortest total time, then the least waiting of developed strips, then the most slack.
 *
 * <p>Of the running strips as many as possible are read in time; those that cannot be are named as lost.
 */
public final class RunPlanner {
    /** By what the full effort is divided. */
    private static final int QUICKER = 400;

    private RunPlanner() {}

    /** Returns the plan for a request; the same request gets the same plan. */
    public static RunPlan plan(PlanRequest request) {
        return plan(request, jobs -> Refining.shortest(jobs, 1).refined());
    }

    /** Returns the shortest plan, whatever waits and slack it leaves: the first aim alone. */
    public static RunPlan shortest(PlanRequest request) {
        return plan(request, jobs -> Refining.shortest(jobs, 1).unrefined());
    }

    /** Returns a plan at once, with a small part of the effort: for a run under way, in which nobody waits for a proof. */
    public static RunPlan quickly(PlanRequest request) {
        return plan(request, jobs -> Refining.shortest(jobs, QUICKER).refined());
    }

    private static RunPlan plan(PlanRequest request, Function<Jobs, Refining> search) {
        List<StartedStrip> kept = new Saving(request).kept();
        Jobs jobs = Jobs.of(kept, request);
        return jobs.count == 0 ? nothing(request) : plan(request, kept, search.apply(jobs));
    }

    private static RunPlan nothing(PlanRequest request) {
        Duration zero = Duration.ZERO;
        return new RunPlan(List.of(), request.running(), zero, zero, true, zero, zero, true);
    }

    private static RunPlan plan(PlanRequest request, List<StartedStrip> kept, Refining refined) {
        List<StartedStrip> lost = new ArrayList<>(request.running());
        lost.removeAll(kept);
        return new RunPlan(
                strips(request, kept, refined.best()),
                lost,
                Duration.ofMillis(refined.best().total()),
                Duration.ofMillis(refined.bound()),
                refined.bound() == refined.best().total(),
                Duration.ofMillis(refined.best().lateness(refined.jobs())),
                Duration.ofMillis(refined.best().leastSlack(refined.jobs())),
                refined.proven());
    }

    private static List<PlannedStrip> strips(PlanRequest request, List<StartedStrip> kept, Found found) {
        List<PlanStrip> strips = new ArrayList<>();
        kept.forEach(strip -> strips.add(strip.strip()));
        strips.addAll(request.toStart());
        return IntStream.range(0, strips.size())
                .mapToObj(job -> planned(strips.get(job), found, job, job < kept.size()))
                .toList();
    }

    private static PlannedStrip planned(PlanStrip strip, Found found, int job, boolean running) {
        Duration started = Duration.ofMillis(found.started()[job]);
        return new PlannedStrip(
                strip, started.minus(strip.handsOn()), started, Duration.ofMillis(found.readAt()[job]), running);
    }
}

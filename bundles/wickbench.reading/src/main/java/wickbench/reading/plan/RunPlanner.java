package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wickbench.reading.plan.Search.Found;

/**
 * Plans a run: the shortest total time, then the least waiting of developed strips, then the most slack.
 *
 * <p>Of the running strips as many as possible are read in time; those that cannot be are named as lost.
 */
public final class RunPlanner {
    /** Blocks laid before the search is given up; what one order costs grows with its blocks. */
    private static final long EFFORT = 16_000_000;

    private RunPlanner() {}

    /** Returns the plan for a request; the same request gets the same plan. */
    public static RunPlan plan(PlanRequest request) {
        List<StartedStrip> kept = new Saving(request).kept();
        Jobs jobs = Jobs.of(kept, request);
        Search search = new Search(jobs, jobs.slack, EFFORT / Math.max(1, 2L * jobs.count));
        Found last = OneByOne.of(jobs);
        Found found = search.shortest(last.total()).orElse(last);
        return plan(request, kept, found, search);
    }

    private static RunPlan plan(PlanRequest request, List<StartedStrip> kept, Found found, Search search) {
        List<PlannedStrip> strips = strips(request, kept, found);
        List<StartedStrip> lost = new ArrayList<>(request.running());
        lost.removeAll(kept);
        Duration total = strips.isEmpty() ? Duration.ZERO : Duration.ofMillis(found.total());
        Duration bound = search.exhausted() ? total : Duration.ofMillis(Math.min(found.total(), search.root()));
        Duration lateness = strips.stream().map(PlannedStrip::lateness).reduce(Duration.ZERO, Duration::plus);
        Duration slack = strips.stream()
                .map(strip -> request.rule().slack(strip.strip()).minus(strip.lateness()))
                .min(Duration::compareTo)
                .orElse(Duration.ZERO);
        return new RunPlan(
                strips,
                lost,
                total,
                bound,
                bound.equals(total),
                lateness,
                slack,
                lateness.isZero() && bound.equals(total));
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

package wickbench.reading.plan;

import java.time.Duration;
import java.util.List;

/**
 * Times for every strip of a run.
 *
 * @param strips those to be read, the running ones first, else in the order of the request
 * @param lost running strips that cannot be read inside their window any more, whatever is done
 * @param total from the moment of the plan to the end of the last look
 * @param bound no plan is shorter than this
 * @param optimal whether no plan is shorter than {@code total}
 * @param lateness how long strips wait after they have developed, added up
 * @param leastSlack how much later the tightest look might begin and still be in time; zero without strips
 * @param refined whether, besides, none as short waits less, and none of those leaves more slack
 */
public record RunPlan(
        List<PlannedStrip> strips,
        List<StartedStrip> lost,
        Duration total,
        Duration bound,
        boolean optimal,
        Duration lateness,
        Duration leastSlack,
        boolean refined) {
    public RunPlan {
        strips = List.copyOf(strips);
        lost = List.copyOf(lost);
    }

    /** Returns by how much the plan may at most be longer than the shortest. */
    public Duration gap() {
        return total.minus(bound);
    }
}

package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Tries every order of looks at strips that run; shares nothing with the planner. */
final class EveryLook {
    private EveryLook() {}

    /** Returns how many strips can be read in time at most. */
    static int most(PlanRequest request) {
        return most(request.running(), request.rule(), request.freeFrom());
    }

    private static int most(List<StartedStrip> left, WindowRule rule, Duration free) {
        int most = 0;
        for (StartedStrip strip : left) {
            Duration opens = strip.startedAt().plus(strip.strip().develop());
            Duration begin = opens.compareTo(free) > 0 ? opens : free;
            if (begin.compareTo(opens.plus(rule.slack(strip.strip()))) <= 0) {
                List<StartedStrip> others = new ArrayList<>(left);
                others.remove(strip);
                most = Math.max(
                        most, 1 + most(others, rule, begin.plus(strip.strip().look())));
            }
        }
        return most;
    }
}

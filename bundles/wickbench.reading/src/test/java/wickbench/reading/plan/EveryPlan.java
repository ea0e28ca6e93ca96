package wickbench.reading.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Looks at every plan of a few strips in whole seconds, second by second; shares nothing with the planner.
 *
 * <p>A state names for each strip that it waits, when it was started, or that it was read. Of the ways to a state in a second the
 * one with the least waits, then the most slack, is kept.
 */
final class EveryPlan {
    private static final int WAITING = Integer.MIN_VALUE;
    private static final int READ = Integer.MAX_VALUE;

    private final PlanRequest request;
    private final List<PlanStrip> strips;
    private final WindowRule rule;
    private final List<Map<List<Integer>, Worth>> bySecond = new ArrayList<>();

    private EveryPlan(PlanRequest request) {
        this.request = request;
        strips = request.strips();
        rule = request.rule();
    }

    record Worth(int lateness, int slack) {
        boolean better(Worth other) {
            return lateness < other.lateness || lateness == other.lateness && slack > other.slack;
        }
    }

    record Best(int total, Worth worth) {}

    /** Returns the best plan; all strips that run must be readable in time. */
    static Best of(PlanRequest request) {
        return new EveryPlan(request).search();
    }

    private Best search() {
        Integer[] first = new Integer[strips.size()];
        Arrays.fill(first, WAITING);
        for (int i = 0; i < request.running().size(); i++) {
            first[i] = seconds(request.running().get(i).startedAt());
        }
        Integer[] done = new Integer[strips.size()];
        Arrays.fill(done, READ);
        int free = seconds(request.freeFrom());
        reach(free, Arrays.asList(first), new Worth(0, READ));
        for (int second = free; ; second++) {
            Map<List<Integer>, Worth> states = at(second);
            if (states.containsKey(Arrays.asList(done))) {
                return new Best(second, states.get(Arrays.asList(done)));
            }
            int now = second;
            states.forEach((state, worth) -> leave(now, state, worth));
        }
    }

    private Map<List<Integer>, Worth> at(int second) {
        return second < bySecond.size() ? bySecond.get(second) : Collections.emptyMap();
    }

    private void reach(int second, List<Integer> state, Worth worth) {
        while (bySecond.size() <= second) {
            bySecond.add(new HashMap<>());
        }
        bySecond.get(second).merge(state, worth, (one, other) -> one.better(other) ? one : other);
    }

    private void leave(int now, List<Integer> state, Worth worth) {
        reach(now + 1, state, worth);
        for (int i = 0; i < strips.size(); i++) {
            PlanStrip strip = strips.get(i);
            if (state.get(i) == WAITING) {
                int started = now + seconds(strip.handsOn());
                reach(started, with(state, i, started), worth);
            } else if (state.get(i) != READ) {
                look(now, state, worth, i);
            }
        }
    }

    private void look(int now, List<Integer> state, Worth worth, int i) {
        PlanStrip strip = strips.get(i);
        int late = now - state.get(i) - seconds(strip.develop());
        int slack = seconds(rule.slack(strip)) - late;
        if (late >= 0 && slack >= 0) {
            reach(
                    now + seconds(strip.look()),
                    with(state, i, READ),
                    new Worth(worth.lateness() + late, Math.min(worth.slack(), slack)));
        }
    }

    private static List<Integer> with(List<Integer> state, int i, int value) {
        List<Integer> next = new ArrayList<>(state);
        next.set(i, value);
        return next;
    }

    private static int seconds(Duration span) {
        return (int) span.toSeconds();
    }
}

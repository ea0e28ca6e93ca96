package wickbench.reading.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A search from the first piece of work on and from the last one back, in ever wider layers, until one of them proves something.
 *
 * <p>A plan read from its end is a plan too, with looks and hands-on work exchanged. Which way is the easier proof is not known
 * beforehand: both go on while layers are narrow, and then the one that proves more. Effort is counted in numbers reckoned, not
 * in time, so the same request gives the same plan on every machine.
 */
final class BothWays {
    private static final int NARROWEST = 30;
    /** A long run begins with narrower layers, for it has more of them. */
    private static final int FIRST = 1200;

    private static final int LEAST = 4;
    private static final int WIDER = 5;
    /** From this width on only the better way goes on. */
    private static final int ONE_WAY = 3000;
    /** Wider layers take too much memory: a beginning of a run of 20 strips takes about a kilobyte. */
    private static final int WIDEST = 60_000;

    private final List<Way> ways = new ArrayList<>();
    private final int freeFrom;
    private Optional<Found> best = Optional.empty();
    private long have;
    private long bound;
    private long effort;
    private final int narrowest;

    /**
     * @param goals what is searched, on the strips as they are and as they are seen from the end
     * @param floor nothing has less
     */
    BothWays(Jobs jobs, Function<Jobs, Goal> goals, long floor) {
        freeFrom = (int) jobs.freeFrom;
        bound = floor;
        ways.add(new Way(jobs, goals, false));
        have = ways.get(0).goal.have();
        if (!jobs.anyRunning()) {
            ways.add(new Way(jobs.backwards(), goals, true));
        }
        narrowest = Math.max(LEAST, Math.min(NARROWEST, FIRST / jobs.blocks()));
    }

    /** One way of the search. */
    private static final class Way {
        private final Goal goal;
        private final Layers layers;
        private final boolean back;
        private long leftOut;

        Way(Jobs jobs, Function<Jobs, Goal> goals, boolean back) {
            goal = goals.apply(jobs);
            layers = new Layers(jobs, goal);
            this.back = back;
        }
    }

    /** Searches until something is proven, or the effort does not suffice for wider layers. */
    BothWays search(long most) {
        long last = 0;
        int width = narrowest;
        while (!proven() && width <= WIDEST && effort + WIDER * last <= most) {
            last = 0;
            for (Way way : ways) {
                last += proven() ? 0 : search(way, width);
            }
            effort += last;
            if (width >= ONE_WAY && ways.size() > 1) {
                ways.remove(ways.get(0).leftOut < ways.get(1).leftOut ? 0 : 1);
            }
            width = wider(width);
        }
        return this;
    }

    private static int wider(int width) {
        return width == WIDEST ? WIDEST + 1 : Math.min(WIDEST, WIDER * width);
    }

    private long search(Way way, int width) {
        long before = way.layers.effort();
        way.goal.lower(have);
        way.leftOut = way.layers.search(width);
        if (way.goal.have() < have) {
            have = way.goal.have();
            best = way.goal.best().map(found -> way.back ? found.backwards(freeFrom) : found);
        }
        bound = Math.max(bound, Math.min(have, way.leftOut));
        return way.layers.effort() - before;
    }

    boolean proven() {
        return bound >= have;
    }

    /** Returns how many numbers were reckoned. */
    long effort() {
        return effort;
    }

    /** Returns the best, when it is better than what was known before. */
    Optional<Found> best() {
        return best;
    }

    /** Returns what no plan has less than. */
    long bound() {
        return bound;
    }
}

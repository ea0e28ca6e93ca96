package wickbench.reading.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A search from the first piece of work on and from the last one back, in ever wider layers, until one of them proves something.
 *
 * <p>A plan read from its end is a plan too, with looks and hands-on work exchanged. Which way is the easier proof is not known
 * beforehand: both go on while layers are narrow, and then the one that proves more. Wide layers are also searched from below, for
 * what is hardly more than the bound: that leaves little room, so that few beginnings are worth going on from. Effort is counted in
 * numbers reckoned, not in time, so the same request gives the same plan on every machine.
 */
final class BothWays {
    private static final int NARROWEST = 30;
    /** A long run begins with narrower layers, for it has more of them. */
    private static final int FIRST = 1200;

    private static final int LEAST = 4;
    private static final int WIDER = 5;
    /** From this width on only the better way goes on, and is also searched from below. */
    private static final int ONE_WAY = 10_000;
    /** Wider layers take too much memory: a beginning of a run of 20 strips takes about a kilobyte. */
    private static final int WIDEST = 93_750;
    /** In as many steps the search from below would reach the best, if no unit of time were coarser. */
    private static final int STEPS = 64;

    private final List<Way> ways = new ArrayList<>();
    private final int freeFrom;
    private final long unit;
    private Optional<Found> best = Optional.empty();
    private long have;
    private long bound;
    private long effort;
    /** How much effort searches of the last width have taken at most for each beginning of it. */
    private double perWidth;

    private final int narrowest;

    /**
     * @param goals what is searched, on the strips as they are and as they are seen from the end
     * @param floor nothing has less
     */
    BothWays(Jobs jobs, Function<Jobs, Goal> goals, long floor) {
        freeFrom = (int) jobs.freeFrom;
        unit = jobs.unit;
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
        int width = narrowest;
        while (!proven() && affords(width, most)) {
            perWidth = 0;
            for (Way way : ways) {
                seek(way, width, have);
            }
            if (width >= ONE_WAY) {
                keepBetterWay();
                climb(width, most);
            }
            width *= WIDER;
        }
        return this;
    }

    private boolean affords(int width, long most) {
        return width <= WIDEST && effort + ways.size() * width * perWidth <= most;
    }

    private void keepBetterWay() {
        if (ways.size() > 1) {
            ways.remove(ways.get(0).leftOut < ways.get(1).leftOut ? 0 : 1);
        }
    }

    /** Looks for the least that is not ruled out, and a little more, and so on, as far as layers of this width can tell. */
    private void climb(int width, long most) {
        boolean further = true;
        while (further && have - bound > unit && affords(width, most)) {
            long open = have - bound;
            seek(ways.get(0), width, bound + unit * Math.max(1, open / STEPS / unit));
            further = have - bound < open;
        }
    }

    /** Looks for what has less than a limit. */
    private void seek(Way way, int width, long limit) {
        if (proven()) {
            return;
        }
        long before = way.layers.effort();
        way.goal.seek(limit);
        way.leftOut = Math.min(limit, way.layers.search(width));
        if (way.goal.best().isPresent()) {
            have = way.goal.have();
            best = way.goal.best().map(found -> way.back ? found.backwards(freeFrom) : found);
        }
        bound = Math.max(bound, Math.min(have, way.leftOut));
        long spent = way.layers.effort() - before;
        perWidth = Math.max(perWidth, (double) spent / width);
        effort += spent;
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

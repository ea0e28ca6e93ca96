package wickbench.reading.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * The three aims one after the other: the shortest total, the least waits among those, the most slack among those.
 *
 * @param part by what the full effort is divided
 * @param bound no plan is shorter
 * @param proven whether no plan is better by any of the three aims; slack counts in whole seconds
 */
record Refining(Jobs jobs, int part, Found best, long bound, boolean proven) {
    /** Blocks laid before a search is given up, for a run of one strip; each block costs as many steps as there are strips. */
    private static final long FOR_TOTAL = 160_000_000;

    /** The same for waits and slack, which have a plan to fall back on. */
    private static final long FOR_WAITS = 80_000_000;

    private static final long FEWEST = 8;
    private static final long SECOND = 1000;

    /** Returns the shortest plan, with waits and slack as they fell. */
    static Refining shortest(Jobs jobs, int part) {
        BothWays total = BothWays.search(jobs, effort(jobs, FOR_TOTAL / part));
        return new Refining(jobs, part, total.best(), total.bound(), total.proven());
    }

    /** Returns the plan that is best by all three aims, as far as the effort goes. */
    Refining refined() {
        return jobs.blocks() > Lateness.MOST_BLOCKS
                ? unrefined()
                : waitingLess().slacker();
    }

    /** Returns the plan as it is, proven only where nobody waits. */
    Refining unrefined() {
        return new Refining(jobs, part, best, bound, proven && best.lateness(jobs) == 0);
    }

    private static long effort(Jobs jobs, long effort) {
        long strips = jobs.count;
        return Math.max(FEWEST * jobs.blocks(), effort / (strips * strips));
    }

    private Refining waitingLess() {
        long waits = best.lateness(jobs);
        if (waits == 0) {
            return this;
        }
        LeastLateness goal = new LeastLateness(jobs, jobs.slack, best.total(), waits, 0);
        Search search = new Search(jobs, goal, effort(jobs, FOR_WAITS / part));
        Found less = search.run().orElse(best);
        return new Refining(jobs, part, less, bound, proven && search.exhausted());
    }

    /** Halves the range in which the most slack lies. */
    private Refining slacker() {
        long waits = best.lateness(jobs);
        Refining refined = this;
        long most = waits == 0 ? 0 : Arrays.stream(jobs.slack).min().orElse(0) / SECOND;
        long have = best.leastSlack(jobs) / SECOND;
        while (have < most) {
            long want = (have + most + 1) / 2;
            LeastLateness goal = new LeastLateness(jobs, tightened(want * SECOND), best.total(), waits + 1, waits);
            Search search = new Search(jobs, goal, effort(jobs, FOR_WAITS / part));
            Optional<Found> found = search.run();
            refined = new Refining(jobs, part, found.orElse(refined.best), bound, refined.proven && search.exhausted());
            have = found.isPresent() ? refined.best.leastSlack(jobs) / SECOND : have;
            most = found.isPresent() ? most : want - 1;
        }
        return refined;
    }

    private long[] tightened(long by) {
        return Arrays.stream(jobs.slack).map(slack -> slack - by).toArray();
    }
}

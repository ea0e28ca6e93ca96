package wickbench.reading.plan;

import java.util.Arrays;

/** The three aims one after the other: the shortest total, the least waits among those, the most slack among those. */
final class Refining {
    /** Numbers reckoned before a search for the shortest total is given up. */
    private static final long FOR_TOTAL = 2_500_000_000L;

    /** The same for runs so long that hardly one is proven. */
    private static final long FOR_LONG = 150_000_000;

    /** The same for waits and slack together, which have a plan to fall back on. */
    private static final long FOR_WAITS = 800_000_000;

    private static final long SECOND = 1000;

    private final Jobs jobs;
    private final long bound;
    private Found best;
    private boolean proven;
    private long effort;

    private Refining(Jobs jobs, Found best, long bound, long effort) {
        this.jobs = jobs;
        this.best = best;
        this.bound = bound;
        this.effort = effort;
        proven = best.total() == bound;
    }

    /**
     * Finds the shortest plan, with waits and slack as they fall.
     *
     * @param part by what the full effort is divided
     */
    static Refining shortest(Jobs jobs, int part) {
        Found first = OneByOne.of(jobs);
        if (!Kinds.fit(first.total())) {
            return new Refining(jobs, first, jobs.freeFrom + jobs.work(), 0);
        }
        long effort = (jobs.blocks() > Lateness.MOST_BLOCKS ? FOR_LONG : FOR_TOTAL) / part;
        BothWays total = new BothWays(jobs, each -> new LeastTotal(each, first.total()), 0).search(effort);
        return new Refining(jobs, total.best().orElse(first), total.bound(), FOR_WAITS / part);
    }

    /** Looks for the plan that is best by all three aims, as far as the effort goes. */
    Refining refined() {
        if (jobs.blocks() > Lateness.MOST_BLOCKS || effort == 0) {
            return unrefined();
        }
        waitLess();
        slacken();
        return this;
    }

    /** Leaves the plan as it is, proven only where nobody waits. */
    Refining unrefined() {
        proven = proven && best.lateness(jobs) == 0;
        return this;
    }

    Jobs jobs() {
        return jobs;
    }

    Found best() {
        return best;
    }

    /** Returns a time that no plan is shorter than. */
    long bound() {
        return bound;
    }

    /** Tells whether no plan is better by any of the aims; slack counts in whole seconds. */
    boolean proven() {
        return proven;
    }

    private void waitLess() {
        take(waits(0, best.lateness(jobs), 0));
    }

    /** Halves the range in which the most slack lies. */
    private void slacken() {
        long waits = best.lateness(jobs);
        long most = waits == 0 ? 0 : Arrays.stream(jobs.slack).min().orElse(0) / SECOND;
        long have = best.leastSlack(jobs) / SECOND;
        while (have < most) {
            long want = (have + most + 1) / 2;
            BothWays search = waits(want * SECOND, waits + 1, waits);
            take(search);
            have = search.best().isPresent() ? best.leastSlack(jobs) / SECOND : have;
            most = search.best().isPresent() ? most : want - 1;
        }
    }

    private void take(BothWays search) {
        best = search.best().orElse(best);
        proven = proven && search.proven();
        effort -= search.effort();
    }

    /** Searches for waits that are less in all, with windows that close sooner. */
    private BothWays waits(long sooner, long have, long floor) {
        long[] slack = Arrays.stream(jobs.slack).map(each -> each - sooner).toArray();
        return new BothWays(jobs, each -> new LeastWaits(each, slack, best.total(), have), floor).search(effort);
    }
}

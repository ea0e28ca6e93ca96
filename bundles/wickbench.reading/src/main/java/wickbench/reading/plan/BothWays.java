package wickbench.reading.plan;

import java.util.Arrays;

/**
 * The shortest total, searched from the first block on and, where that proves nothing, from the last block back.
 *
 * <p>A plan read from its end is a plan too, with looks and hands-on work exchanged. Where looking takes longer than the work of
 * the hands, it is the looks that are in each other's way, and the way back is the easier proof.
 *
 * @param best the shortest plan that was found
 * @param bound no plan is shorter
 */
record BothWays(Found best, long bound) {

    /** Searches with this effort for each way; strips that run already leave only the way on. */
    static BothWays search(Jobs jobs, long effort) {
        if (jobs.anyRunning()) {
            return on(jobs, effort);
        }
        boolean onFirst = sum(jobs.hands) >= sum(jobs.look);
        BothWays first = onFirst ? on(jobs, effort) : back(jobs, effort);
        return first.proven() ? first : first.and(onFirst ? back(jobs, effort) : on(jobs, effort));
    }

    boolean proven() {
        return best.total() == bound;
    }

    private static BothWays on(Jobs jobs, long effort) {
        long least = new Bound(jobs)
                .of(new Order(jobs, jobs.slack, Long.MAX_VALUE, false), jobs.running, new int[jobs.classes.length]);
        Search search = new Search(jobs, new LeastTotal(jobs, OneByOne.of(jobs), least), effort);
        Found found = search.run().orElseThrow();
        return new BothWays(found, search.exhausted() ? found.total() : least);
    }

    private static BothWays back(Jobs jobs, long effort) {
        BothWays back = on(jobs.backwards(), effort);
        return new BothWays(back.best.backwards(jobs.freeFrom), back.bound + jobs.freeFrom);
    }

    private BothWays and(BothWays other) {
        Found shorter = other.best.total() < best.total() ? other.best : best;
        return new BothWays(shorter, Math.max(bound, other.bound));
    }

    private static long sum(long[] spans) {
        return Arrays.stream(spans).sum();
    }
}

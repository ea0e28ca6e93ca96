package wickbench.reading.plan;

import java.util.Optional;

/** The shortest total time. */
final class LeastTotal implements Goal {
    private final Jobs jobs;
    private final long bound;
    private Found best;

    /** @param bound no plan is shorter */
    LeastTotal(Jobs jobs, Found first, long bound) {
        this.jobs = jobs;
        this.bound = bound;
        best = first;
    }

    @Override
    public long[] slack() {
        return jobs.slack;
    }

    @Override
    public long cap() {
        return best.total();
    }

    @Override
    public boolean countsWaits() {
        return false;
    }

    @Override
    public boolean worth(long least, Order order) {
        return least < best.total();
    }

    @Override
    public void keep(Order order) {
        best = Found.of(jobs, order, order.times());
    }

    @Override
    public boolean reached() {
        return best.total() <= bound;
    }

    @Override
    public Optional<Found> best() {
        return Optional.of(best);
    }
}

package wickbench.reading.plan;

import java.util.Optional;

/** The shortest total time. */
final class LeastTotal implements Goal {
    private final Jobs jobs;
    private long have;
    private Optional<Found> best = Optional.empty();

    /** @param have how long a plan is that is known */
    LeastTotal(Jobs jobs, long have) {
        this.jobs = jobs;
        this.have = have;
    }

    @Override
    public long[] slack() {
        return jobs.slack;
    }

    @Override
    public boolean countsWaits() {
        return false;
    }

    @Override
    public long least(Partial plan) {
        return plan.bound;
    }

    @Override
    public boolean hopes(Partial plan) {
        return plan.bound < have;
    }

    @Override
    public void keep(Order order) {
        Found found = Found.of(jobs, order, order.times(jobs.slack));
        if (found.total() < have) {
            have = found.total();
            best = Optional.of(found);
        }
    }

    @Override
    public long longer(Partial plan) {
        return Integer.MAX_VALUE;
    }

    @Override
    public long latestEnd() {
        // what is to be gone below need be no multiple of the unit, while every total is one
        return (have - 1) / jobs.unit * jobs.unit;
    }

    @Override
    public long have() {
        return have;
    }

    @Override
    public void seek(long below) {
        have = below;
        best = Optional.empty();
    }

    @Override
    public Optional<Found> best() {
        return best;
    }
}

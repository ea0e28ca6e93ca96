package wickbench.reading.plan;

import java.util.Optional;

/** The least sum of waits among the plans that are no longer than the shortest. */
final class LeastWaits implements Goal {
    private final Jobs jobs;
    private final long[] slack;
    private final long total;
    private final long unit;
    private long have;
    private Optional<Found> best = Optional.empty();

    /**
     * @param slack by how much each look may begin after its strip has developed
     * @param total how long the plan may be
     * @param have waits must be less in all
     */
    LeastWaits(Jobs jobs, long[] slack, long total, long have) {
        this.jobs = jobs;
        this.slack = slack;
        this.total = total;
        unit = Jobs.divisor(jobs.unit, jobs.slack[0] - slack[0]);
        this.have = have;
    }

    @Override
    public long[] slack() {
        return slack;
    }

    @Override
    public boolean countsWaits() {
        return true;
    }

    @Override
    public long least(Partial plan) {
        return plan.allWaits;
    }

    @Override
    public boolean hopes(Partial plan) {
        return plan.bound <= total && plan.allWaits < have;
    }

    @Override
    public void keep(Order order) {
        Found found = Found.of(jobs, order, new Lateness(jobs, order, slack, total).times());
        long waits = found.lateness(jobs);
        if (waits < have) {
            have = waits;
            best = Optional.of(found);
        }
    }

    @Override
    public long longer(Partial plan) {
        return (have - 1) / unit * unit - plan.allWaits;
    }

    @Override
    public long latestEnd() {
        return total;
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

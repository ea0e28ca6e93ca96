package wickbench.reading.plan;

import java.util.Optional;

/** The least sum of waits among the plans that are no longer than the shortest. */
final class LeastLateness implements Goal {
    private final Jobs jobs;
    private final long[] slack;
    private final long total;
    private final long enough;
    private long below;
    private Optional<Found> best = Optional.empty();

    /**
     * @param slack by how much each look may begin after its strip has developed
     * @param total how long the plan may be
     * @param below waits must be less in all
     * @param enough with which waits in all the search may end
     */
    LeastLateness(Jobs jobs, long[] slack, long total, long below, long enough) {
        this.jobs = jobs;
        this.slack = slack;
        this.total = total;
        this.below = below;
        this.enough = enough;
    }

    @Override
    public long[] slack() {
        return slack;
    }

    @Override
    public long cap() {
        return total;
    }

    @Override
    public boolean countsWaits() {
        return true;
    }

    @Override
    public boolean worth(long bound, Order order) {
        return bound <= total && order.lateness() < below;
    }

    @Override
    public void keep(Order order) {
        Found found = Found.of(jobs, order, new Lateness(jobs, order, slack, total).times());
        long lateness = found.lateness(jobs);
        if (lateness < below) {
            below = lateness;
            best = Optional.of(found);
        }
    }

    @Override
    public boolean reached() {
        return best.isPresent() && below <= enough;
    }

    @Override
    public Optional<Found> best() {
        return best;
    }
}

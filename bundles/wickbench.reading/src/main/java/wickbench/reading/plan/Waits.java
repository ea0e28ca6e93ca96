package wickbench.reading.plan;

/** How long the order of the blocks alone makes a strip wait for its look. */
final class Waits {
    private final Jobs jobs;
    private final Order order;
    private final long[] path;

    Waits(Jobs jobs, Order order) {
        this.jobs = jobs;
        this.order = order;
        path = new long[2 * jobs.count];
    }

    /** Returns the longest path from its start to its look, less what is allowed. */
    long of(int strip, int look, long begin) {
        if (jobs.isRunning(strip)) {
            return begin - jobs.started[strip] - jobs.develop[strip];
        }
        int dip = order.dipAt(strip);
        path[dip] = 0;
        for (int block = dip + 1; block <= look; block++) {
            path[block] = path[block - 1] + order.length(block - 1);
            int other = order.job(block);
            if (order.isLook(block) && !jobs.isRunning(other) && order.dipAt(other) >= dip) {
                path[block] = Math.max(path[block], path[order.dipAt(other)] + jobs.hands[other] + jobs.develop[other]);
            }
        }
        return path[look] - jobs.hands[strip] - jobs.develop[strip];
    }
}

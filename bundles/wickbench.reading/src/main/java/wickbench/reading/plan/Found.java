package wickbench.reading.plan;

import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The times of a plan, in milliseconds.
 *
 * @param started when each job's liquid is in the window
 * @param readAt when each job's look begins
 * @param total when the last look ends
 */
record Found(long[] started, long[] readAt, long total) {

    /** Takes the blocks of an order at these times. */
    static Found of(Jobs jobs, Order order, long[] times) {
        long[] started = jobs.started.clone();
        long[] readAt = new long[jobs.count];
        long total = 0;
        for (int block = 0; block < order.size(); block++) {
            int strip = order.job(block);
            if (order.isLook(block)) {
                readAt[strip] = times[block];
                total = times[block] + jobs.look[strip];
            } else {
                started[strip] = times[block] + jobs.hands[strip];
            }
        }
        return new Found(started, readAt, total);
    }

    /** Returns this plan read from its end, beginning when the operator is free. */
    Found backwards(long freeFrom) {
        long end = freeFrom + total;
        return new Found(
                LongStream.of(readAt).map(at -> end - at).toArray(),
                LongStream.of(started).map(at -> end - at).toArray(),
                total);
    }

    /** Returns how long strips wait after they have developed, added up. */
    long lateness(Jobs jobs) {
        return IntStream.range(0, jobs.count).mapToLong(job -> waits(jobs, job)).sum();
    }

    /** Returns the least that is left of a window. */
    long leastSlack(Jobs jobs) {
        return IntStream.range(0, jobs.count)
                .mapToLong(job -> jobs.slack[job] - waits(jobs, job))
                .min()
                .orElse(0);
    }

    private long waits(Jobs jobs, int job) {
        return readAt[job] - started[job] - jobs.develop[job];
    }
}

package wickbench.reading.plan;

import java.util.Comparator;
import java.util.stream.IntStream;

/** The plan that can always be done: what runs is read by the end of its windows, then one strip after the other. */
final class OneByOne {
    private final Jobs jobs;
    private final long[] started;
    private final long[] readAt;
    private long free;

    private OneByOne(Jobs jobs) {
        this.jobs = jobs;
        started = jobs.started.clone();
        readAt = new long[jobs.count];
        free = jobs.freeFrom;
    }

    static Found of(Jobs jobs) {
        OneByOne plan = new OneByOne(jobs);
        IntStream.range(0, jobs.count)
                .filter(jobs::isRunning)
                .boxed()
                .sorted(Comparator.comparing(job -> jobs.started[job] + jobs.develop[job] + jobs.slack[job]))
                .forEach(plan::read);
        IntStream.range(0, jobs.count).filter(job -> !jobs.isRunning(job)).forEach(plan::startAndRead);
        return new Found(plan.started, plan.readAt, plan.free);
    }

    private void startAndRead(int job) {
        started[job] = free + jobs.hands[job];
        free = started[job];
        read(job);
    }

    private void read(int job) {
        readAt[job] = Math.max(free, started[job] + jobs.develop[job]);
        free = readAt[job] + jobs.look[job];
    }
}

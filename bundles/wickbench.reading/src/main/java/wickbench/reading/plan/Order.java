package wickbench.reading.plan;

import java.util.ArrayDeque;
import java.util.Deque;

/** The operator's pieces of work in the order in which they are done. */
final class Order {
    private final Jobs jobs;
    private final int[] job;
    private final boolean[] isLook;
    private final int[] dipAt;

    private Order(Jobs jobs, int size) {
        this.jobs = jobs;
        job = new int[size];
        isLook = new boolean[size];
        dipAt = new int[jobs.count];
    }

    /** Takes the steps up to the last; strips of a kind are started, and read, as they come in their class. */
    static Order of(Jobs jobs, Step last) {
        Deque<Step> steps = new ArrayDeque<>();
        for (Step step = last; step != null; step = step.before()) {
            steps.push(step);
        }
        Order order = new Order(jobs, steps.size());
        int[] dipped = jobs.running.clone();
        int[] read = new int[jobs.classes.length];
        int block = 0;
        for (Step step : steps) {
            int kind = step.kind();
            order.isLook[block] = step.isLook();
            order.job[block] = jobs.classes[kind][step.isLook() ? read[kind]++ : dipped[kind]++];
            if (!step.isLook()) {
                order.dipAt[order.job[block]] = block;
            }
            block++;
        }
        return order;
    }

    int size() {
        return job.length;
    }

    int job(int block) {
        return job[block];
    }

    boolean isLook(int block) {
        return isLook[block];
    }

    long length(int block) {
        return isLook[block] ? jobs.look[job[block]] : jobs.hands[job[block]];
    }

    /**
     * Returns the earliest begin of every block: the longest path through all bounds.
     *
     * @param slack by how much each look may begin after its strip has developed; it must be possible
     */
    long[] times(long[] slack) {
        long[] times = new long[size()];
        boolean moved = true;
        while (moved) {
            push(times);
            moved = pull(times, slack);
        }
        return times;
    }

    private void push(long[] times) {
        long free = jobs.freeFrom;
        for (int block = 0; block < size(); block++) {
            times[block] = Math.max(times[block], free);
            if (isLook[block]) {
                times[block] = Math.max(times[block], started(times, job[block]) + jobs.develop[job[block]]);
            }
            free = times[block] + length(block);
        }
    }

    /** Pulls the start of each strip whose look comes too late. */
    private boolean pull(long[] times, long[] slack) {
        boolean moved = false;
        for (int block = 0; block < size(); block++) {
            int strip = job[block];
            if (isLook[block] && !jobs.isRunning(strip)) {
                long late = times[block] - started(times, strip) - jobs.develop[strip] - slack[strip];
                times[dipAt[strip]] += Math.max(0, late);
                moved |= late > 0;
            }
        }
        return moved;
    }

    private long started(long[] times, int strip) {
        return jobs.isRunning(strip) ? jobs.started[strip] : times[dipAt[strip]] + jobs.hands[strip];
    }
}

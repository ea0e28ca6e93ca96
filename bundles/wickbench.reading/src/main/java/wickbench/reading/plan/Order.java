package wickbench.reading.plan;

import java.util.Arrays;

/**
 * The operator's blocks of work as far as their order is decided, each at the earliest time that the order allows.
 *
 * <p>An order of blocks is a set of bounds on differences of times: a block begins after the one before has ended, a look
 * not before its strip has developed and not after its window. The earliest times are the longest paths through these bounds. A
 * look that comes too late for its window pulls the start of its strip behind it, and with it all that follows.
 */
final class Order {
    private final Jobs jobs;
    private final long[] slack;
    private final long cap;
    private final boolean countsWaits;
    private final int[] job;
    private final boolean[] isLook;
    private final int[] dipAt;
    /** The times of the first {@code d} blocks while {@code d} blocks were decided. */
    private final long[][] at;

    /** What the strips read among the first {@code d} blocks wait at least, whatever the times. */
    private final long[] lateness;

    /** How much work the first {@code d} blocks are. */
    private final long[] work;

    private final Waits waits;
    private int size;

    /**
     * @param slack by how much each look may begin after its strip has developed
     * @param cap a time that no block may end after
     * @param countsWaits whether {@link #lateness} is to be told
     */
    Order(Jobs jobs, long[] slack, long cap, boolean countsWaits) {
        this.jobs = jobs;
        this.slack = slack;
        this.cap = cap;
        this.countsWaits = countsWaits;
        job = new int[2 * jobs.count];
        isLook = new boolean[2 * jobs.count];
        dipAt = new int[jobs.count];
        at = new long[2 * jobs.count + 1][];
        at[0] = new long[0];
        lateness = new long[2 * jobs.count + 1];
        work = new long[2 * jobs.count + 1];
        waits = new Waits(jobs, this);
    }

    int size() {
        return size;
    }

    int job(int block) {
        return job[block];
    }

    boolean isLook(int block) {
        return isLook[block];
    }

    /** Returns when the operator is free again. */
    long end() {
        return size == 0 ? jobs.freeFrom : at[size][size - 1] + length(size - 1);
    }

    long at(int block) {
        return at[size][block];
    }

    /** Returns when a strip starts that is started in this order or was before. */
    long started(int strip) {
        return jobs.isRunning(strip) ? jobs.started[strip] : at[size][dipAt[strip]] + jobs.hands[strip];
    }

    /** Returns the earliest begin of a strip's look after all that is decided. */
    long readable(int strip) {
        return Math.max(end(), started(strip) + jobs.develop[strip]);
    }

    /** Returns how long after a strip's start the operator is free at the soonest, however far the start is put off. */
    long workSince(int strip) {
        return jobs.isRunning(strip) ? end() - jobs.started[strip] : work[size] - work[dipAt[strip] + 1];
    }

    /** Lets a block follow; tells whether all can still be done before the cap. It stays until {@link #undo}. */
    boolean append(int strip, boolean look) {
        long begin = look ? readable(strip) : end();
        int block = size++;
        job[block] = strip;
        isLook[block] = look;
        if (!look) {
            dipAt[strip] = block;
        }
        lateness[size] = lateness[block] + (look && countsWaits ? waits.of(strip, block, begin) : 0);
        work[size] = work[block] + length(block);
        long[] times = times(size);
        System.arraycopy(at[block], 0, times, 0, block);
        times[block] = begin;
        return end() <= cap && (!look || settle(times));
    }

    void undo() {
        size--;
    }

    private long[] times(int depth) {
        if (at[depth] == null) {
            at[depth] = new long[depth];
        }
        return at[depth];
    }

    /** Pulls starts behind their looks until every window is kept; false when that cannot be. */
    private boolean settle(long[] times) {
        int from = pulled(times, size - 1);
        for (int round = 0; from < size; round++) {
            // each round that is needed fixes at least one block for good, unless the bounds contradict each other
            if (from < 0 || round > size) {
                return false;
            }
            push(times, from);
            if (end() > cap) {
                return false;
            }
            from = pulled(times, from);
        }
        return true;
    }

    private void push(long[] times, int from) {
        for (int block = from + 1; block < size; block++) {
            long earliest = times[block - 1] + length(block - 1);
            if (isLook[block]) {
                earliest = Math.max(earliest, started(job[block]) + jobs.develop[job[block]]);
            }
            times[block] = Math.max(times[block], earliest);
        }
    }

    /** Pulls the start of each strip whose look comes too late; returns the first block moved, -1 when one cannot be. */
    private int pulled(long[] times, int from) {
        int first = Integer.MAX_VALUE;
        for (int block = from; block < size; block++) {
            int strip = job[block];
            if (isLook[block]) {
                long late = times[block] - started(strip) - jobs.develop[strip] - slack[strip];
                if (late > 0 && jobs.isRunning(strip)) {
                    return -1;
                }
                if (late > 0) {
                    times[dipAt[strip]] += late;
                    first = Math.min(first, dipAt[strip]);
                }
            }
        }
        return first;
    }

    /** Returns what the strips that are read wait at least in all. */
    long lateness() {
        return lateness[size];
    }

    /** Returns the block in which a strip of this order is started. */
    int dipAt(int strip) {
        return dipAt[strip];
    }

    long length(int block) {
        return isLook[block] ? jobs.look[job[block]] : jobs.hands[job[block]];
    }

    /** Returns the begin of every block. */
    long[] times() {
        return Arrays.copyOf(at[size], size);
    }
}

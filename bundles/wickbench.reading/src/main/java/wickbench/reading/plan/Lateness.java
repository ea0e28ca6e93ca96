package wickbench.reading.plan;

import java.util.Arrays;

/**
 * Lets strips of a decided order start as late as helps, so that they wait least for their looks.
 *
 * <p>The sum of the waits is linear in the times, and the times are bounded by differences only. From the earliest times on, a set
 * of blocks that must move together is moved later as long as it holds more starts than looks; the best such set is a greatest
 * closure, found by matching starts to looks that they push (Picard 1976, Management Science 22). When none is left, no
 * times of this order wait less. Sets of blocks are bits of a long.
 */
final class Lateness {
    /** Blocks that fit into the bits of a long. */
    static final int MOST_BLOCKS = 64;

    private final Jobs jobs;
    private final Order order;
    private final long[] slack;
    private final long cap;
    private final int blocks;
    private final long[] at;
    private final int[] partner;
    private final long[] pushes;
    private final int[] matched;

    /** @param cap when the last look ends at the latest */
    Lateness(Jobs jobs, Order order, long[] slack, long cap) {
        this.jobs = jobs;
        this.order = order;
        this.slack = slack;
        this.cap = cap;
        blocks = order.size();
        at = order.times(slack);
        partner = new int[blocks];
        pushes = new long[blocks];
        matched = new int[blocks];
        partners();
    }

    /** Returns the times of the blocks with the least sum of waits. */
    long[] times() {
        for (long set = movable(); set != 0; set = movable()) {
            long step = step(set);
            for (int block = 0; block < blocks; block++) {
                at[block] += has(set, block) ? step : 0;
            }
        }
        return at;
    }

    private void partners() {
        int[] dip = new int[jobs.count];
        Arrays.fill(dip, -1);
        for (int block = 0; block < blocks; block++) {
            int strip = order.job(block);
            partner[block] = -1;
            if (!order.isLook(block)) {
                dip[strip] = block;
            } else if (dip[strip] >= 0) {
                partner[block] = dip[strip];
                partner[dip[strip]] = block;
            }
        }
    }

    /** Returns a set of blocks that holds more starts than looks and may move; empty when there is none. */
    private long movable() {
        Arrays.fill(matched, -1);
        for (int block = 0; block < blocks; block++) {
            pushes[block] = order.isLook(block) ? 0 : closure(block);
        }
        long unmatched = 0;
        for (int block = 0; block < blocks; block++) {
            if (pushes[block] != 0 && !match(block, new long[1])) {
                unmatched |= bit(block);
            }
        }
        return reached(unmatched);
    }

    /** Finds a look for a start, moving others to other looks; remembers in {@code seen} which looks it tried. */
    private boolean match(int start, long[] seen) {
        for (int look = 0; look < blocks; look++) {
            if (order.isLook(look) && has(pushes[start], look) && !has(seen[0], look)) {
                seen[0] |= bit(look);
                if (matched[look] < 0 || match(matched[look], seen)) {
                    matched[look] = start;
                    return true;
                }
            }
        }
        return false;
    }

    /** Adds to starts without a look all blocks that they push, and the starts matched to those, and so on. */
    private long reached(long starts) {
        long set = 0;
        long open = starts;
        while (open != 0) {
            int block = Long.numberOfTrailingZeros(open);
            long more = order.isLook(block) ? bit(matched[block]) : pushes[block];
            set |= bit(block);
            open = (open | more) & ~set;
        }
        return set;
    }

    /** Returns what moves when a block does; empty when it cannot. */
    private long closure(int first) {
        long set = 0;
        long open = bit(first);
        while (open != 0) {
            int block = Long.numberOfTrailingZeros(open);
            if (room(block) == 0) {
                return 0;
            }
            set |= bit(block);
            open |= follower(block) | partnerPushed(block);
            open &= ~set;
        }
        return set;
    }

    private long follower(int block) {
        return block + 1 < blocks && gap(block) == 0 ? bit(block + 1) : 0;
    }

    private long partnerPushed(int block) {
        return partner[block] >= 0 && partnerGap(block) == 0 ? bit(partner[block]) : 0;
    }

    /** Returns how far a set may move before it pushes another block or an end. */
    private long step(long set) {
        long step = Long.MAX_VALUE;
        for (int block = 0; block < blocks; block++) {
            if (has(set, block)) {
                step = Math.min(step, room(block));
                step = Math.min(step, block + 1 == blocks || has(set, block + 1) ? step : gap(block));
                step = Math.min(step, partner[block] < 0 || has(set, partner[block]) ? step : partnerGap(block));
            }
        }
        return step;
    }

    /** Returns how far a block may move for the end of the plan and the window of a strip that runs already. */
    private long room(int block) {
        long room = block + 1 == blocks ? cap - at[block] - order.length(block) : Long.MAX_VALUE;
        int strip = order.job(block);
        return partner[block] < 0
                ? Math.min(room, jobs.started[strip] + jobs.develop[strip] + slack[strip] - at[block])
                : room;
    }

    private long gap(int block) {
        return at[block + 1] - at[block] - order.length(block);
    }

    /** Returns how far a start may move before it pushes its look, or a look before it pulls its start. */
    private long partnerGap(int block) {
        int strip = order.job(block);
        long lag = jobs.hands[strip] + jobs.develop[strip];
        return order.isLook(block)
                ? at[partner[block]] + lag + slack[strip] - at[block]
                : at[partner[block]] - at[block] - lag;
    }

    private static long bit(int block) {
        return 1L << block;
    }

    private static boolean has(long set, int block) {
        return (set & bit(block)) != 0;
    }
}

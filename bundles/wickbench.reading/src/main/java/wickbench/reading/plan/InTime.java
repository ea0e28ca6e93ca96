package wickbench.reading.plan;

import java.util.Arrays;

/**
 * Leaves of the times of a beginning those in which open strips can be read in time, one by one and two by two.
 *
 * <p>Of two open strips one is read first. Where only one of them can be, as the other would come too late behind it, their starts
 * must be so far apart that it fits; where neither can be, nothing goes on from here.
 */
final class InTime {
    private final Kinds kinds;
    /** How long after its start the look at each open strip must begin at the latest, and may end at the soonest. */
    private final int[] latest;

    private final int[] done;

    InTime(Kinds kinds) {
        int strips = Arrays.stream(kinds.strips).sum();
        this.kinds = kinds;
        latest = new int[strips];
        done = new int[strips];
    }

    /**
     * Tells whether any times are left.
     *
     * @param longer by how much one strip may wait longer than it must
     */
    boolean narrow(Partial plan, long longer) {
        return oneByOne(plan, longer) && twoByTwo(plan.zone);
    }

    /** Returns how long after its start the look at an open strip must begin, as it was narrowed last. */
    int latest(int strip) {
        return latest[strip];
    }

    private boolean oneByOne(Partial plan, long longer) {
        for (int i = 0; i < plan.open.length; i++) {
            latest[i] = plan.latest(kinds, i, longer);
            done[i] = plan.soonest(kinds, i) + kinds.look[plan.open[i]];
            if (plan.zone.free(i + 1) > latest[i] || !plan.zone.freeWithin(i + 1, latest[i])) {
                return false;
            }
        }
        return true;
    }

    /** Goes on as long as anything moves, for what moves two strips apart may leave others only one order. */
    private boolean twoByTwo(Zone zone) {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 1; i < zone.open; i++) {
                for (int j = 0; j < i; j++) {
                    boolean first = mayComeFirst(zone, i, j);
                    boolean second = mayComeFirst(zone, j, i);
                    if (!first && !second) {
                        return false;
                    }
                    if (first != second) {
                        int before = first ? i : j;
                        int after = first ? j : i;
                        boolean apart = zone.between(before + 1, after + 1) >= done[before] - latest[after];
                        if (!apart && !zone.apart(before + 1, after + 1, done[before] - latest[after])) {
                            return false;
                        }
                        moved |= !apart;
                    }
                }
            }
        }
        return true;
    }

    /** Tells whether a strip can be read before another, and that still in time. */
    private boolean mayComeFirst(Zone zone, int strip, int other) {
        return zone.between(other + 1, strip + 1) + done[strip] <= latest[other];
    }
}

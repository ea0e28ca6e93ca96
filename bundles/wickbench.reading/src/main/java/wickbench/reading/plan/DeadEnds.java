package wickbench.reading.plan;

import java.util.Arrays;

/** Tells where strips that are started cannot all be read in time any more, whatever comes next. */
final class DeadEnds {
    private final Kinds kinds;
    private final InTime inTime;
    private final Releases looks;
    /** How long after the start of one strip the look at another may begin at the soonest. */
    private final int[][] readable;

    DeadEnds(Kinds kinds) {
        int strips = Arrays.stream(kinds.strips).sum();
        this.kinds = kinds;
        inTime = new InTime(kinds);
        looks = new Releases(strips);
        readable = new int[strips][strips];
    }

    /**
     * Tells whether it is one; if not, leaves only times of it that may be gone on from.
     *
     * @param longer by how much one strip may wait longer than it must
     */
    boolean is(Partial plan, long longer) {
        return !inTime.narrow(plan, longer) || inEachOthersWay(plan);
    }

    private boolean inEachOthersWay(Partial plan) {
        int open = plan.open.length;
        for (int i = 0; i < open; i++) {
            for (int j = 0; j < open; j++) {
                readable[i][j] = plan.zone.readable(i + 1, j + 1, kinds.develop[plan.open[j]]);
            }
        }
        for (int i = 0; i < open; i++) {
            if (lateAfterOthers(plan, i)) {
                return true;
            }
        }
        return false;
    }

    /** Looks that cannot come after a strip's look come before it, one after the other. */
    private boolean lateAfterOthers(Partial plan, int strip) {
        int kind = plan.open[strip];
        int others = 0;
        looks.clear();
        for (int i = 0; i < plan.open.length; i++) {
            int other = plan.open[i];
            boolean first = i < strip && other == kind
                    || i != strip && readable[i][strip] + kinds.look[kind] > inTime.latest(i);
            if (first) {
                looks.add(readable[strip][i], kinds.look[other]);
                others++;
            }
        }
        return others > 0 && looks.served(plan.zone.free(strip + 1), 0) > inTime.latest(strip);
    }
}

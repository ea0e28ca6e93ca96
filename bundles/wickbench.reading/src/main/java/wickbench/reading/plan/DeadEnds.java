package wickbench.reading.plan;

import java.util.Arrays;

/** Tells where strips that are started cannot all be read in time any more, whatever comes next. */
final class DeadEnds {
    private final Kinds kinds;
    private final Releases looks;
    /** How long after the start of one strip the look at another may begin at the soonest. */
    private final int[][] readable;

    DeadEnds(Kinds kinds) {
        int strips = Arrays.stream(kinds.strips).sum();
        this.kinds = kinds;
        looks = new Releases(strips);
        readable = new int[strips][strips];
    }

    boolean is(Partial plan) {
        return tooLate(plan) || inEachOthersWay(plan);
    }

    private boolean tooLate(Partial plan) {
        for (int i = 0; i < plan.open.length; i++) {
            if (plan.zone.free(i + 1) > kinds.latest[plan.open[i]]) {
                return true;
            }
        }
        return false;
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
                    || i != strip && readable[i][strip] + kinds.look[kind] > kinds.latest[other];
            if (first) {
                looks.add(readable[strip][i], kinds.look[other]);
                others++;
            }
        }
        return others > 0 && looks.served(plan.zone.free(strip + 1), 0) > kinds.latest[kind];
    }
}

package wickbench.reading.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What a plan takes at least because some looks must come before the last start.
 *
 * <p>A look that comes after the last start leaves room between its own start and the last one for no more work than its strip
 * may wait. Strips for which there is more work than that, whatever its order, are read before, and put the last start off.
 */
final class LastStart {
    private final Kinds kinds;
    private final Releases looks;
    /** Kinds by how long a strip may wait from its hands-on work on, shortest first. */
    private final int[] bySpan;
    /** Which open strips are read before the last start. */
    private final boolean[] before;

    private final int[] after;
    private int handsLeft;
    private int leastTail;
    private int leastLook;

    /** @param looks to be used and left as it comes */
    LastStart(Kinds kinds, Releases looks) {
        this.kinds = kinds;
        this.looks = looks;
        before = new boolean[Arrays.stream(kinds.strips).sum()];
        after = new int[kinds.count];
        bySpan = IntStream.range(0, kinds.count)
                .boxed()
                .sorted(Comparator.comparingInt(this::span))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Returns a time before which the last look cannot end. */
    int of(Partial plan) {
        weigh(plan);
        if (handsLeft == 0) {
            return Integer.MIN_VALUE;
        }
        int waiting = tooEarly(plan) * leastLook;
        int started = startedBefore(plan, handsLeft + waiting);
        looks.clear();
        for (int i = 0; i < plan.open.length; i++) {
            if (before[i]) {
                int kind = plan.open[i];
                looks.add(plan.zone.between(0, i + 1) + kinds.develop[kind], kinds.look[kind]);
            }
        }
        int served = looks.served(plan.free(), handsLeft + waiting);
        return Math.max(served, plan.free() + handsLeft + waiting + started) + leastTail;
    }

    private void weigh(Partial plan) {
        handsLeft = 0;
        leastTail = Integer.MAX_VALUE;
        leastLook = Integer.MAX_VALUE;
        for (int kind = 0; kind < kinds.count; kind++) {
            int left = kinds.strips[kind] - plan.dipped[kind];
            if (left > 0) {
                handsLeft += left * kinds.hands[kind];
                leastTail = Math.min(leastTail, kinds.develop[kind] + kinds.look[kind]);
                leastLook = Math.min(leastLook, kinds.look[kind]);
            }
        }
    }

    /** Returns the looks, in all, of started strips that must be read before; each that must may make another one. */
    private int startedBefore(Partial plan, int work) {
        Arrays.fill(before, 0, plan.open.length, false);
        int looked = 0;
        boolean more = true;
        while (more) {
            more = false;
            for (int i = 0; i < plan.open.length; i++) {
                int kind = plan.open[i];
                if (!before[i] && plan.zone.free(i + 1) + work + looked > kinds.latest[kind]) {
                    looked += kinds.look[kind];
                    before[i] = true;
                    more = true;
                }
            }
        }
        return looked;
    }

    /**
     * Returns how many strips that are not started cannot all be started so late that they are read after the last start.
     *
     * <p>Seen from the last start backwards these are pieces of work with due dates, of which the fewest come late (Moore 1968,
     * Management Science 15): the soonest due first, and where one is late the longest is left out.
     */
    private int tooEarly(Partial plan) {
        Arrays.fill(after, 0);
        int work = 0;
        int late = 0;
        for (int kind : bySpan) {
            for (int i = plan.dipped[kind]; i < kinds.strips[kind]; i++) {
                after[kind]++;
                work += kinds.hands[kind];
                if (work > span(kind)) {
                    int longest = longest();
                    after[longest]--;
                    work -= kinds.hands[longest];
                    late++;
                }
            }
        }
        return late;
    }

    private int longest() {
        int longest = -1;
        for (int kind = 0; kind < kinds.count; kind++) {
            if (after[kind] > 0 && (longest < 0 || kinds.hands[kind] > kinds.hands[longest])) {
                longest = kind;
            }
        }
        return longest;
    }

    private int span(int kind) {
        return kinds.hands[kind] + kinds.latest[kind];
    }
}

package wickbench.reading.plan;

import java.util.Arrays;

/** What the work that is left takes at least, whatever its order. */
final class Bound {
    private final Kinds kinds;
    private final Releases looks;
    private final LastStart lastStart;

    Bound(Kinds kinds) {
        this.kinds = kinds;
        looks = new Releases(Arrays.stream(kinds.strips).sum());
        lastStart = new LastStart(kinds, looks);
    }

    /** Returns a time before which the last look cannot end. */
    int of(Partial plan) {
        return Math.max(Math.max(lastTail(plan), looks(plan)), lastStart.of(plan));
    }

    /** Returns how long it takes at least from when the operator is free to the end, however late that is. */
    int rest(Partial plan) {
        int work = 0;
        for (int kind = 0; kind < kinds.count; kind++) {
            work += (kinds.strips[kind] - plan.dipped[kind]) * kinds.hands[kind]
                    + (kinds.strips[kind] - plan.read[kind]) * kinds.look[kind];
        }
        return Math.max(work, lastTail(plan) - plan.free());
    }

    /** The strip started last develops after all hands-on work; longest tails first is the best order, as kinds come. */
    private int lastTail(Partial plan) {
        int hands = plan.free();
        int end = hands;
        for (int kind = 0; kind < kinds.count; kind++) {
            int left = kinds.strips[kind] - plan.dipped[kind];
            if (left > 0) {
                hands += left * kinds.hands[kind];
                end = Math.max(end, hands + kinds.develop[kind] + kinds.look[kind]);
            }
        }
        return end;
    }

    /** Looks as soon as their strips may have developed, hands-on work in every gap, cut at will. */
    private int looks(Partial plan) {
        int hands = 0;
        looks.clear();
        for (int i = 0; i < plan.open.length; i++) {
            looks.add(plan.zone.between(0, i + 1) + kinds.develop[plan.open[i]], kinds.look[plan.open[i]]);
        }
        for (int kind = 0; kind < kinds.count; kind++) {
            int starts = plan.free();
            for (int i = plan.dipped[kind]; i < kinds.strips[kind]; i++) {
                starts += kinds.hands[kind];
                hands += kinds.hands[kind];
                looks.add(starts + kinds.develop[kind], kinds.look[kind]);
            }
        }
        return looks.served(plan.free(), hands);
    }
}

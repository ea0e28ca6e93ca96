package wickbench.reading.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Beginnings of plans with equally many pieces of work, none of which is as good as another wherever that goes on.
 *
 * <p>Only those can be compared that have started and read equally many strips of each kind, and have the same strips open.
 */
final class Layer {
    /** From this width on the soonest ends alone are kept: what can be finished was found in narrower layers. */
    private static final int WIDE = 3000;

    /** How many times as many as are kept lie in it while it is filled. */
    private static final int OVERFULL = 2;

    /** Chance is the same every time, so that equal requests give equal plans. */
    private static final long SEED = 1;

    private final Goal goal;
    private final int width;
    private Map<Done, List<Partial>> plans = new LinkedHashMap<>();
    private int size;
    private long leftOut = Long.MAX_VALUE;

    /** @param width how many are kept at most */
    Layer(Goal goal, int width) {
        this.goal = goal;
        this.width = width;
    }

    /** What was done, whatever the order and the times. */
    private record Done(int hash, int[] dipped, int[] read, int[] open) {
        static Done of(Partial plan) {
            int hash =
                    31 * (31 * Arrays.hashCode(plan.dipped) + Arrays.hashCode(plan.read)) + Arrays.hashCode(plan.open);
            return new Done(hash, plan.dipped, plan.read, plan.open);
        }

        @Override
        public int hashCode() {
            return hash;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Done done
                    && hash == done.hash
                    && Arrays.equals(dipped, done.dipped)
                    && Arrays.equals(read, done.read)
                    && Arrays.equals(open, done.open);
        }
    }

    /** Takes a beginning, unless one that is kept is as good; returns with how many it was compared. */
    int add(Partial plan) {
        List<Partial> alike = plans.computeIfAbsent(Done.of(plan), done -> new ArrayList<>(2));
        int compared = alike.size();
        for (Partial other : alike) {
            if (other.betterThan(plan, goal.countsWaits())) {
                return compared;
            }
        }
        size -= alike.size();
        alike.removeIf(other -> plan.betterThan(other, goal.countsWaits()));
        alike.add(plan);
        size += alike.size();
        if (size > OVERFULL * width) {
            cut();
        }
        return compared;
    }

    private void cut() {
        List<Partial> kept = kept();
        plans = new LinkedHashMap<>();
        size = kept.size();
        kept.forEach(plan ->
                plans.computeIfAbsent(Done.of(plan), done -> new ArrayList<>(2)).add(plan));
    }

    /** Returns what those that were left out because there were too many have at least. */
    long leftOut() {
        return leftOut;
    }

    /**
     * Returns as many as may be kept.
     *
     * <p>Those that promise most are often too dense to be finished. So in a narrow layer, and where waits are counted, they make
     * but half, and the other half are the most promising ones with no strip open, with one, with two, and so on. Among those that
     * promise as much chance decides: those that were made one after the other are alike, and may all have the same dead end.
     */
    List<Partial> kept() {
        List<Partial> all = new ArrayList<>(size);
        plans.values().forEach(all::addAll);
        if (all.size() <= width) {
            return all;
        }
        Collections.shuffle(all, new Random(SEED));
        all.sort(Comparator.<Partial>comparingLong(goal::least).thenComparingInt(Partial::free));
        int promising = width < WIDE || goal.countsWaits() ? width / 2 : width;
        List<Partial> kept = new ArrayList<>(all.subList(0, promising));
        Map<Integer, List<Partial>> byOpen = new LinkedHashMap<>();
        all.subList(promising, all.size())
                .forEach(plan -> byOpen.computeIfAbsent(plan.open.length, open -> new ArrayList<>())
                        .add(plan));
        for (int turn = 0; kept.size() < width; turn++) {
            for (List<Partial> some : byOpen.values()) {
                if (turn < some.size() && kept.size() < width) {
                    kept.add(some.get(turn));
                    some.set(turn, null);
                }
            }
        }
        byOpen.values()
                .forEach(some -> some.stream()
                        .filter(plan -> plan != null)
                        .forEach(plan -> leftOut = Math.min(leftOut, goal.least(plan))));
        return kept;
    }
}

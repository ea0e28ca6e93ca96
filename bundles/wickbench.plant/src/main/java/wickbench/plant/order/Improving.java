package wickbench.plant.order;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;

/**
 * A good order of many products: pieces of up to three are moved to where they help, and after each standstill two parts change places.
 *
 * <p>Or, Northwestern University (1976), for the moves, none of which turns a piece round; Martin, Otto and Felten, Complex Systems 5
 * (1991) 299, for what shakes it. The same request gives the same order.
 */
final class Improving {
    private static final int LONGEST_PIECE = 3;
    private static final int SHAKES = 60;

    /** Visits of places, at most: some seconds. */
    private static final long EFFORT = 600_000_000;

    private final Rules rules;
    private final Random chance = new Random(1);
    private final int n;
    private long effort = EFFORT;

    private Improving(Rules rules) {
        this.rules = rules;
        n = rules.table().size();
    }

    /** Returns an order that keeps to the rules, if the search found one. */
    static Optional<int[]> order(Rules rules) {
        int[] best = new Improving(rules).search();
        return rules.faults(best) == 0 ? Optional.of(best) : Optional.empty();
    }

    /** Faults weigh more than any time. */
    private record Weight(int faults, long total) {
        boolean below(Weight other) {
            return faults < other.faults || (faults == other.faults && total < other.total);
        }
    }

    private Weight weigh(int[] order) {
        effort -= n;
        long total = 0;
        for (int place = rules.round() ? 0 : 1; place < n; place++) {
            int from = order[(place + n - 1) % n];
            total += rules.table().allowed(from, order[place]) ? rules.table().cost(from, order[place]) : 0;
        }
        return new Weight(rules.faults(order), total);
    }

    private int[] search() {
        int[] best = settle(nearest());
        Weight least = weigh(best);
        for (int shake = 0; shake < SHAKES && effort > 0; shake++) {
            int[] other = settle(shaken(best));
            Weight weight = weigh(other);
            if (weight.below(least)) {
                best = other;
                least = weight;
            }
        }
        return best;
    }

    /** Begins with the first product, and goes on with the nearest that may stand there. */
    private int[] nearest() {
        int[] order = new int[n];
        boolean[] made = new boolean[n];
        for (int place = 0; place < n; place++) {
            int next = -1;
            for (int product = 0; product < n; product++) {
                boolean nearer = !made[product] && (next < 0 || better(place, order, product, next));
                next = nearer ? product : next;
            }
            order[place] = next;
            made[next] = true;
        }
        return order;
    }

    private boolean better(int place, int[] order, int product, int than) {
        if (rules.fits(product, place) != rules.fits(than, place)) {
            return rules.fits(product, place);
        }
        return place > 0
                && rules.table().cost(order[place - 1], product) < rules.table().cost(order[place - 1], than);
    }

    private int[] settle(int[] start) {
        int[] order = start;
        Weight weight = weigh(order);
        boolean moved = true;
        while (moved && effort > 0) {
            moved = false;
            for (int piece = 1; piece <= Math.min(LONGEST_PIECE, n - 1); piece++) {
                for (int from = 0; from + piece <= n; from++) {
                    for (int to = 0; to + piece <= n && effort > 0; to++) {
                        int[] other = moved(order, from, piece, to);
                        Weight lighter = weigh(other);
                        if (lighter.below(weight)) {
                            order = other;
                            weight = lighter;
                            moved = true;
                        }
                    }
                }
            }
        }
        return order;
    }

    /** Takes a piece out and puts it back so that it begins at {@code to}. */
    private static int[] moved(int[] order, int from, int piece, int to) {
        int[] rest = new int[order.length - piece];
        System.arraycopy(order, 0, rest, 0, from);
        System.arraycopy(order, from + piece, rest, from, order.length - from - piece);
        int[] other = new int[order.length];
        System.arraycopy(rest, 0, other, 0, to);
        System.arraycopy(order, from, other, to, piece);
        System.arraycopy(rest, to, other, to + piece, rest.length - to);
        return other;
    }

    private int[] shaken(int[] order) {
        int[] cuts = chance.ints(0, n + 1).distinct().limit(3).sorted().toArray();
        int[] other = Arrays.copyOf(order, n);
        int second = cuts[2] - cuts[1];
        System.arraycopy(order, cuts[1], other, cuts[0], second);
        System.arraycopy(order, cuts[0], other, cuts[0] + second, cuts[1] - cuts[0]);
        return other;
    }
}

package wickbench.plant.order;

import java.util.Arrays;
import java.util.Optional;

/**
 * The shortest order, exactly, by the shortest way through each set of products to each last one.
 *
 * <p>Bellman, J. ACM 9 (1962) 61; Held and Karp, J. SIAM 10 (1962) 196. Since what was made runs as long in whatever order, the
 * shortest way is also the earliest finish, so that dates by which a product is due cost nothing more. Takes n² 2ⁿ steps.
 */
final class SubsetSearch {
    /** 17 products are 38 million steps and 18 MB. */
    static final int MOST = 17;

    private final Rules rules;
    private final int n;
    private final long[][] best;
    private final int[] earlier;
    private final long[] running;

    private SubsetSearch(Rules rules) {
        this.rules = rules;
        n = rules.table().size();
        best = new long[1 << n][];
        earlier = new int[n];
        Arrays.setAll(earlier, rules::earlier);
        running = new long[1 << n];
        for (int made = 1; made < 1 << n; made++) {
            running[made] = running[made & made - 1] + rules.runs(Integer.numberOfTrailingZeros(made));
        }
    }

    /** Returns the shortest order that keeps to the rules; empty when none does. */
    static Optional<int[]> order(Rules rules) {
        return new SubsetSearch(rules).search();
    }

    private Optional<int[]> search() {
        for (int first = 0; first < n; first++) {
            // a round may begin anywhere, so it begins with the first
            if ((!rules.round() || first == 0) && mayFollow(0, first, 0)) {
                reach(1 << first, first, 0);
            }
        }
        for (int made = 1; made < 1 << n; made++) {
            for (int last = 0; best[made] != null && last < n; last++) {
                extend(made, last);
            }
        }
        return last().map(this::trace);
    }

    private void extend(int made, int last) {
        if (best[made][last] >= ChangeTable.NEVER) {
            return;
        }
        for (int next = 0; next < n; next++) {
            if ((made & 1 << next) == 0 && rules.table().allowed(last, next)) {
                long changes = best[made][last] + rules.table().cost(last, next);
                if (mayFollow(made, next, changes)) {
                    reach(made | 1 << next, next, changes);
                }
            }
        }
    }

    private boolean mayFollow(int made, int next, long changes) {
        return rules.fits(next, Integer.bitCount(made))
                && (earlier[next] & ~made) == 0
                && rules.inTime(next, changes + running[made | 1 << next]);
    }

    private void reach(int made, int last, long changes) {
        if (best[made] == null) {
            best[made] = new long[n];
            Arrays.fill(best[made], ChangeTable.NEVER);
        }
        best[made][last] = Math.min(best[made][last], changes);
    }

    private Optional<Integer> last() {
        int all = (1 << n) - 1;
        Optional<Integer> found = Optional.empty();
        long least = ChangeTable.NEVER;
        for (int last = 0; best[all] != null && last < n; last++) {
            long total = best[all][last] + home(last);
            if (total < least) {
                least = total;
                found = Optional.of(last);
            }
        }
        return found;
    }

    private long home(int last) {
        return rules.round() && n > 1 ? rules.table().cost(last, 0) : 0;
    }

    /** Finds each product's forerunner again, which saves keeping it. */
    private int[] trace(int end) {
        int[] order = new int[n];
        int made = (1 << n) - 1;
        int last = end;
        for (int place = n - 1; place > 0; place--) {
            order[place] = last;
            int before = made & ~(1 << last);
            int from = forerunner(before, last, best[made][last]);
            made = before;
            last = from;
        }
        order[0] = last;
        return order;
    }

    private int forerunner(int before, int last, long changes) {
        for (int from = 0; from < n; from++) {
            if ((before & 1 << from) != 0
                    && rules.table().allowed(from, last)
                    && best[before][from] + rules.table().cost(from, last) == changes) {
                return from;
            }
        }
        throw new IllegalStateException("no way leads to " + last);
    }
}

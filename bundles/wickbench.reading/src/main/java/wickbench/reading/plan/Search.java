package wickbench.reading.plan;

import java.util.List;
import java.util.Optional;

/**
 * Looks for the best order of blocks, depth first, what begins soonest first, leaving out what cannot be better.
 *
 * <p>Good orders stray seldom from what begins soonest, so orders with few strays are tried first (limited discrepancy search:
 * Harvey and Ginsberg 1995, IJCAI). The effort is counted in blocks laid, not in time, so the same request gives the same
 * plan on every machine.
 */
final class Search {
    /** A quick look first; a proof where it is easy; and where it is not, good orders that stray more. */
    private static final List<Stage> STAGES = List.of(
            new Stage(0, 150),
            new Stage(1, 150),
            new Stage(2, 150),
            new Stage(Integer.MAX_VALUE, 2),
            new Stage(3, 10),
            new Stage(5, 5),
            new Stage(8, 1));

    private static final long LEAST = 4;

    private final Jobs jobs;
    private final Goal goal;
    private final int[] dipped;
    private final int[] read;
    private final Bound bound;
    private final int blocks;
    private final Candidates candidates;
    private final int[] found;
    private final int[] next;
    private final int[] laid;
    private final int[] strayed;
    private long effort;
    private int strays;
    private Order order;
    private boolean exhausted;

    Search(Jobs jobs, Goal goal, long effort) {
        this.jobs = jobs;
        this.goal = goal;
        this.effort = effort;
        bound = new Bound(jobs);
        dipped = jobs.running.clone();
        read = new int[jobs.classes.length];
        blocks = jobs.blocks();
        candidates = new Candidates(jobs, blocks);
        found = new int[blocks];
        next = new int[blocks];
        laid = new int[blocks];
        strayed = new int[blocks];
    }

    /**
     * A part of the search.
     *
     * @param strays how often an order may stray from what begins soonest
     * @param part by what the whole effort is divided
     */
    private record Stage(int strays, int part) {}

    /** Returns the best plan as far as the effort goes. */
    Optional<Found> run() {
        long whole = effort;
        long left = effort;
        for (int i = 0; i < STAGES.size() && !exhausted && left > 0; i++) {
            long share = Math.min(left, Math.max(whole / STAGES.get(i).part(), LEAST * blocks));
            effort = share;
            strays = STAGES.get(i).strays();
            order = new Order(jobs, goal.slack(), goal.cap(), goal.countsWaits());
            explore();
            left -= share - effort;
            exhausted = goal.reached() || strays == Integer.MAX_VALUE && effort > 0;
        }
        return goal.best();
    }

    /** Tells whether nothing better is left to look at. */
    boolean exhausted() {
        return exhausted;
    }

    /** Goes down and back without calling itself: a long run has more blocks than a thread may have calls. */
    private void explore() {
        open(0);
        while (order.size() > 0 || more(0)) {
            int depth = order.size();
            if (more(depth)) {
                int turn = next[depth]++;
                effort--;
                strays -= turn;
                strayed[depth] = turn;
                lay(depth, candidates.at(depth, turn));
            } else {
                back();
            }
        }
    }

    private void open(int depth) {
        next[depth] = 0;
        found[depth] = candidates.list(depth, order, dipped, read);
    }

    private boolean more(int depth) {
        return next[depth] < found[depth] && next[depth] <= strays && effort > 0 && !goal.reached();
    }

    /** A move is a class to start a strip of, or -1 less a class to read a strip of. */
    private void lay(int depth, int move) {
        boolean look = move < 0;
        int c = look ? -1 - move : move;
        laid[depth] = move;
        boolean possible = order.append(jobs.classes[c][look ? read[c] : dipped[c]], look);
        count(move, 1);
        if (!possible
                || !goal.worth(bound.lastTail(order, dipped), order)
                || !goal.worth(bound.looks(order, dipped, read), order)
                || !goal.worth(bound.looksBefore(order, dipped, read), order)) {
            back();
        } else if (order.size() == blocks) {
            goal.keep(order);
            back();
        } else {
            open(order.size());
        }
    }

    private void back() {
        order.undo();
        int depth = order.size();
        count(laid[depth], -1);
        strays += strayed[depth];
    }

    private void count(int move, int by) {
        if (move < 0) {
            read[-1 - move] += by;
        } else {
            dipped[move] += by;
        }
    }
}

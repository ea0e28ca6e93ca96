package wickbench.reading.plan;

import java.util.Arrays;
import java.util.Optional;

/**
 * Looks for the shortest order of blocks, depth first, what begins soonest first, leaving out what cannot be shorter.
 *
 * <p>The effort is counted in orders looked at, not in time, so that the same request gives the same plan on every machine.
 */
final class Search {
    private final Jobs jobs;
    private final long[] slack;
    private final int[] dipped;
    private final int[] read;
    private final Bound bound;
    private long effort;
    private Order order;
    private long shortest;
    private Optional<Found> best = Optional.empty();

    Search(Jobs jobs, long[] slack, long effort) {
        this.jobs = jobs;
        this.slack = slack;
        this.effort = effort;
        bound = new Bound(jobs);
        dipped = jobs.running.clone();
        read = new int[jobs.classes.length];
    }

    /**
     * The times of a plan.
     *
     * @param started when each job's liquid is in the window
     * @param readAt when each job's look begins
     */
    record Found(long[] started, long[] readAt, long total) {}

    /** Returns the shortest plan that ends before {@code below}, as far as the effort goes. */
    Optional<Found> shortest(long below) {
        shortest = below;
        order = new Order(jobs, slack, below);
        deepen();
        return best;
    }

    /** Tells whether the search ended because nothing was left to look at. */
    boolean exhausted() {
        return effort > 0;
    }

    long root() {
        return bound.of(new Order(jobs, slack, Long.MAX_VALUE), dipped, read);
    }

    private void deepen() {
        if (order.size() == blocks()) {
            keep();
            return;
        }
        int[] moves = moves();
        for (int move : moves) {
            if (effort > 0) {
                effort--;
                take(move);
            }
        }
    }

    private int blocks() {
        int blocks = 2 * jobs.count;
        for (int started : jobs.running) {
            blocks -= started;
        }
        return blocks;
    }

    /** A move is a class to start a strip of, or -1 less a class to read a strip of. */
    private void take(int move) {
        boolean look = move < 0;
        int c = look ? -1 - move : move;
        int strip = jobs.classes[c][look ? read[c] : dipped[c]];
        boolean possible = order.append(strip, look);
        count(c, look, 1);
        if (possible && bound.of(order, dipped, read) < shortest) {
            deepen();
        }
        count(c, look, -1);
        order.undo();
    }

    private void count(int c, boolean look, int by) {
        if (look) {
            read[c] += by;
        } else {
            dipped[c] += by;
        }
    }

    private int[] moves() {
        int[] moves = new int[2 * jobs.classes.length];
        long[] begins = new long[moves.length];
        int found = 0;
        for (int c = 0; c < jobs.classes.length; c++) {
            if (read[c] < dipped[c]) {
                found = insert(moves, begins, found, -1 - c, order.readable(jobs.classes[c][read[c]]));
            }
        }
        for (int c = 0; c < jobs.classes.length; c++) {
            if (dipped[c] < jobs.classes[c].length) {
                found = insert(moves, begins, found, c, order.end());
            }
        }
        return Arrays.copyOf(moves, found);
    }

    /** Keeps the moves by their begin, earlier found ones first among equals. */
    private static int insert(int[] moves, long[] begins, int found, int move, long begin) {
        int place = found;
        while (place > 0 && begins[place - 1] > begin) {
            moves[place] = moves[place - 1];
            begins[place] = begins[place - 1];
            place--;
        }
        moves[place] = move;
        begins[place] = begin;
        return found + 1;
    }

    private void keep() {
        shortest = order.end();
        long[] started = jobs.started.clone();
        long[] readAt = new long[jobs.count];
        for (int block = 0; block < order.size(); block++) {
            int strip = order.job(block);
            if (order.isLook(block)) {
                readAt[strip] = order.at(block);
            } else {
                started[strip] = order.at(block) + jobs.hands[strip];
            }
        }
        best = Optional.of(new Found(started, readAt, shortest));
    }
}

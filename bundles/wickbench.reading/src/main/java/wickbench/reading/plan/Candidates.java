package wickbench.reading.plan;

/** The pieces of work that may come next, what begins soonest first, at each depth of a search. */
final class Candidates {
    private final Jobs jobs;
    private final int[][] moves;
    private final long[][] begins;

    Candidates(Jobs jobs, int blocks) {
        this.jobs = jobs;
        moves = new int[blocks][2 * jobs.classes.length];
        begins = new long[blocks][2 * jobs.classes.length];
    }

    /** Returns a move: a class to start a strip of, or -1 less a class to read a strip of. */
    int at(int depth, int turn) {
        return moves[depth][turn];
    }

    /** Lists the moves by their begin, reading before starting among equals; returns how many there are. */
    int list(int depth, Order order, int[] dipped, int[] read) {
        int count = 0;
        for (int c = 0; c < jobs.classes.length; c++) {
            if (read[c] < dipped[c] && !passesOver(c, order, dipped, read)) {
                count = insert(depth, count, -1 - c, order.readable(jobs.classes[c][read[c]]));
            }
        }
        for (int c = 0; c < jobs.classes.length; c++) {
            if (dipped[c] < jobs.classes[c].length) {
                count = insert(depth, count, c, order.end());
            }
        }
        return count;
    }

    /**
     * Tells whether reading the next strip of a class would pass over one that was started before it, and that neither develops
     * nor may wait longer: exchanging the two looks keeps every sum and every window, so such orders need not be tried.
     */
    private boolean passesOver(int c, Order order, int[] dipped, int[] read) {
        int strip = jobs.classes[c][read[c]];
        for (int d = 0; d < jobs.classes.length; d++) {
            if (d != c && read[d] < dipped[d]) {
                int other = jobs.classes[d][read[d]];
                if (order.started(other) < order.started(strip) && jobs.noSlower(other, strip)) {
                    return true;
                }
            }
        }
        return false;
    }

    private int insert(int depth, int count, int move, long begin) {
        int place = count;
        while (place > 0 && begins[depth][place - 1] > begin) {
            moves[depth][place] = moves[depth][place - 1];
            begins[depth][place] = begins[depth][place - 1];
            place--;
        }
        moves[depth][place] = move;
        begins[depth][place] = begin;
        return count + 1;
    }
}

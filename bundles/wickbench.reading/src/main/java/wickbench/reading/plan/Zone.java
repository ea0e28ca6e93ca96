package wickbench.reading.plan;

import java.util.Arrays;

/**
 * When strips may have been started that are not read yet, and when the operator is free: all times that an order of work allows.
 *
 * <p>Whatever was done before bounds only differences of these times, and of each to the moment of the plan: one is at least so
 * much after the other. So a zone is a table of such distances, each the longest path through all bounds. Row and column 0 stand for
 * the moment of the plan, 1 and on for strips by their start; the last column is the moment in which the operator is free.
 */
final class Zone {
    /** No bound. */
    private static final int NONE = -(1 << 30);

    /** How many strips are started and not read. */
    final int open;

    private final int[] least;

    private Zone(int open, int[] least) {
        this.open = open;
        this.least = least;
    }

    /** Returns the one point where strips were started at these times. */
    static Zone of(int[] starts, int freeFrom) {
        int open = starts.length;
        int[] least = new int[(open + 1) * (open + 2)];
        for (int i = 0; i <= open; i++) {
            int from = i == 0 ? 0 : starts[i - 1];
            for (int j = 0; j <= open; j++) {
                least[i * (open + 2) + j] = (j == 0 ? 0 : starts[j - 1]) - from;
            }
            least[i * (open + 2) + open + 1] = freeFrom - from;
        }
        return new Zone(open, least);
    }

    /** Returns how many numbers it holds. */
    int size() {
        return least.length;
    }

    /** Returns how long after another's start a strip is started at least; both count from 1. */
    int between(int from, int to) {
        return least[from * (open + 2) + to];
    }

    /** Returns how long after the start of a strip, or the moment of the plan, the operator is free at the soonest. */
    int free(int from) {
        return least[from * (open + 2) + open + 1];
    }

    /** Returns how long after {@code from} a strip's look may begin at the soonest. */
    int readable(int from, int strip, int develop) {
        int free = free(from);
        int between = between(from, strip);
        return between == NONE ? free : Math.max(free, between + develop);
    }

    /** Lets hands-on work follow: one more strip is started when it ends. */
    Zone started(int hands) {
        int width = open + 2;
        int[] next = new int[width * (width + 1)];
        for (int i = 0; i <= open; i++) {
            System.arraycopy(least, i * width, next, i * (width + 1), open + 1);
            int end = free(i) + hands;
            next[i * (width + 1) + open + 1] = end;
            next[i * (width + 1) + width] = end;
        }
        Arrays.fill(next, width * (width + 1) - width - 1, next.length, NONE);
        next[next.length - 2] = 0;
        next[next.length - 1] = 0;
        return new Zone(open + 1, next);
    }

    /**
     * Lets the look at a strip follow; null when it cannot be in time.
     *
     * @param latest how long after the strip's start it must begin
     */
    Zone read(int strip, int develop, int latest, int look) {
        if (readable(strip, strip, develop) > latest) {
            return null;
        }
        int width = open + 2;
        int[] next = new int[open * (open + 1)];
        int at = 0;
        for (int i = 0; i <= open; i++) {
            if (i == strip) {
                continue;
            }
            int begins = readable(i, strip, develop);
            // a look that comes too late pulls its start behind it, and what follows the start
            int pulled = begins - latest;
            for (int j = 0; j <= open; j++) {
                if (j == strip) {
                    continue;
                }
                int further = least[strip * width + j];
                int distance = least[i * width + j];
                distance = further == NONE ? distance : Math.max(distance, pulled + further);
                if (i == j && distance > 0) {
                    return null;
                }
                next[at++] = distance;
            }
            next[at++] = begins + look;
        }
        return new Zone(open - 1, next);
    }

    /** Returns what is left of it when the operator must be free by some time; null when nothing is. */
    Zone freeBy(int latest) {
        int width = open + 2;
        int[] next = least.clone();
        for (int i = 0; i <= open; i++) {
            int back = Math.max(least[i * width], free(i) - latest);
            for (int j = 0; j < width; j++) {
                int distance = Math.max(next[i * width + j], back + least[j]);
                if (i == j && distance > 0) {
                    return null;
                }
                next[i * width + j] = distance;
            }
        }
        return new Zone(open, next);
    }

    /** Leaves only the times in which a strip is started at least so long after another; tells whether there are any. */
    boolean apart(int from, int to, int distance) {
        int width = open + 2;
        for (int i = 0; i <= open; i++) {
            int reached = least[i * width + from];
            if (reached != NONE && !push(i, to, reached + distance)) {
                return false;
            }
        }
        return true;
    }

    /** Leaves only those in which the operator is free at most so long after a strip's start; tells whether there are any. */
    boolean freeWithin(int strip, int latest) {
        return apart(open + 1, strip, -latest);
    }

    /** Lets a strip be started so long after {@code from} at least, and what follows its start; tells whether that can be. */
    private boolean push(int from, int to, int distance) {
        int row = from * (open + 2);
        if (distance <= least[row + to]) {
            return true;
        }
        for (int j = 0; j <= open + 1; j++) {
            int further = least[to * (open + 2) + j];
            if (further != NONE) {
                least[row + j] = Math.max(least[row + j], distance + further);
            }
        }
        return least[row + from] <= 0;
    }

    /** Tells whether it allows all that another zone of as many strips allows. */
    boolean holds(Zone other) {
        int[] others = other.least;
        for (int i = least.length - 1; i >= 0; i--) {
            if (least[i] > others[i]) {
                return false;
            }
        }
        return true;
    }
}

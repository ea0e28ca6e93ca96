package wickbench.reading.plan;

/** Looks by the time from which on each may be had. */
final class Releases {
    private final long[] release;
    private final long[] length;
    private int size;

    Releases(int most) {
        release = new long[most];
        length = new long[most];
    }

    void clear() {
        size = 0;
    }

    /** Keeps the order; each class comes in order, so there is little to move. */
    void insert(long soonest, long takes) {
        int place = size++;
        while (place > 0 && release[place - 1] > soonest) {
            release[place] = release[place - 1];
            length[place] = length[place - 1];
            place--;
        }
        release[place] = soonest;
        length[place] = takes;
    }

    /** Returns when all is done at the soonest: looks as they come, other work in every gap, cut at will. */
    long served(long from, long work) {
        long end = from;
        long left = work;
        for (int i = 0; i < size; i++) {
            if (release[i] > end) {
                left -= Math.min(left, release[i] - end);
                end = release[i];
            }
            end += length[i];
        }
        return end + left;
    }
}

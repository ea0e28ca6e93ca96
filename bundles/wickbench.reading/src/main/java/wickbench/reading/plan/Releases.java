package wickbench.reading.plan;

import java.util.Arrays;

/** Looks by the time from which on each may be had. */
final class Releases {
    /** Above the length of any look. */
    private static final int SHIFT = 30;

    private static final long LENGTH = (1L << SHIFT) - 1;

    /** So few are put in order one by one: each kind comes in order, so there is little to move. */
    private static final int FEW = 40;

    /** The time from which on a look may be had, and below it how long it takes. */
    private final long[] looks;

    private int size;

    Releases(int most) {
        looks = new long[most];
    }

    void clear() {
        size = 0;
    }

    void add(int soonest, int takes) {
        long look = ((long) soonest << SHIFT) + takes;
        int place = size++;
        while (size <= FEW && place > 0 && looks[place - 1] > look) {
            looks[place] = looks[place - 1];
            place--;
        }
        looks[place] = look;
    }

    /** Returns when all is done at the soonest: looks as they come, other work in every gap, cut at will. */
    int served(int from, int work) {
        if (size > FEW) {
            Arrays.sort(looks, 0, size);
        }
        int end = from;
        int left = work;
        for (int i = 0; i < size; i++) {
            int release = (int) (looks[i] >> SHIFT);
            if (release > end) {
                left -= Math.min(left, release - end);
                end = release;
            }
            end += (int) (looks[i] & LENGTH);
        }
        return end + left;
    }
}

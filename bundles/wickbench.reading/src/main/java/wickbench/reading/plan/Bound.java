package wickbench.reading.plan;

/** What the work that is left takes at least, whatever its order. */
final class Bound {
    private final Jobs jobs;
    private final long[] release;
    private final long[] length;

    Bound(Jobs jobs) {
        this.jobs = jobs;
        release = new long[jobs.count];
        length = new long[jobs.count];
    }

    /**
     * Returns a time before which the last look cannot end.
     *
     * @param dipped how many of each class are started
     * @param read how many of each class are read
     */
    long of(Order order, int[] dipped, int[] read) {
        return Math.max(lastTail(order, dipped), looks(order, dipped, read));
    }

    /** The strip started last develops after all hands-on work; longest tails first is the best order. */
    long lastTail(Order order, int[] dipped) {
        long hands = order.end();
        long end = hands;
        for (int c = 0; c < jobs.classes.length; c++) {
            int left = jobs.classes[c].length - dipped[c];
            if (left > 0) {
                int strip = jobs.classes[c][0];
                hands += left * jobs.hands[strip];
                end = Math.max(end, hands + jobs.tail(strip));
            }
        }
        return end;
    }

    /** Looks as soon as their strips may have developed, hands-on work in every gap, cut at will. */
    long looks(Order order, int[] dipped, int[] read) {
        long hands = 0;
        int looks = 0;
        for (int c = 0; c < jobs.classes.length; c++) {
            int[] members = jobs.classes[c];
            for (int i = read[c]; i < members.length; i++) {
                int strip = members[i];
                boolean waits = i >= dipped[c];
                long starts = waits ? order.end() + (i - dipped[c] + 1) * jobs.hands[strip] : order.started(strip);
                hands += waits ? jobs.hands[strip] : 0;
                insert(looks++, starts + jobs.develop[strip], jobs.look[strip]);
            }
        }
        return served(order.end(), hands, looks);
    }

    private long served(long from, long hands, int looks) {
        long end = from;
        long left = hands;
        for (int i = 0; i < looks; i++) {
            if (release[i] > end) {
                left -= Math.min(left, release[i] - end);
                end = release[i];
            }
            end += length[i];
        }
        return end + left;
    }

    /** Keeps the looks by release; each class comes in order, so there is little to move. */
    private void insert(int looks, long soonest, long takes) {
        int place = looks;
        while (place > 0 && release[place - 1] > soonest) {
            release[place] = release[place - 1];
            length[place] = length[place - 1];
            place--;
        }
        release[place] = soonest;
        length[place] = takes;
    }
}

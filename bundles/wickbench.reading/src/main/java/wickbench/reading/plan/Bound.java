package wickbench.reading.plan;

/** What the work that is left takes at least, whatever its order. */
final class Bound {
    private final Jobs jobs;
    private final Releases looks;
    private final LastStart lastStart;

    Bound(Jobs jobs) {
        this.jobs = jobs;
        looks = new Releases(jobs.count);
        lastStart = new LastStart(jobs);
    }

    /**
     * Returns a time before which the last look cannot end.
     *
     * @param dipped how many of each class are started
     * @param read how many of each class are read
     */
    long of(Order order, int[] dipped, int[] read) {
        return Math.max(
                looksBefore(order, dipped, read), Math.max(lastTail(order, dipped), looks(order, dipped, read)));
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
        looks.clear();
        for (int c = 0; c < jobs.classes.length; c++) {
            int[] members = jobs.classes[c];
            for (int i = read[c]; i < members.length; i++) {
                int strip = members[i];
                boolean waits = i >= dipped[c];
                long starts = waits ? order.end() + (i - dipped[c] + 1) * jobs.hands[strip] : order.started(strip);
                hands += waits ? jobs.hands[strip] : 0;
                looks.insert(starts + jobs.develop[strip], jobs.look[strip]);
            }
        }
        return looks.served(order.end(), hands);
    }

    /** Looks that must come before the last start put it off. */
    long looksBefore(Order order, int[] dipped, int[] read) {
        return lastStart.of(order, dipped, read);
    }
}

package wickbench.reading.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What a plan takes at least because some looks must come before the last start.
 *
 * <p>A look that comes after the last start leaves room between its own start and the last one for no more work than its strip
 * may wait. Strips for which there is more work than that, whatever its order, are read before, and put the last start off.
 */
final class LastStart {
    private final Jobs jobs;
    private final Releases looks;
    /** Classes by how long a strip may wait from its hands-on work on, shortest first. */
    private final int[] bySpan;
    /** How many strips of each class are read before the last start, of those that are started. */
    private final int[] before;

    private final int[] after;
    private long handsLeft;
    private long leastTail;
    private long leastLook;

    LastStart(Jobs jobs) {
        this.jobs = jobs;
        looks = new Releases(jobs.count);
        before = new int[jobs.classes.length];
        after = new int[jobs.classes.length];
        bySpan = IntStream.range(0, jobs.classes.length)
                .boxed()
                .sorted(Comparator.comparingLong(this::span))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    /** Returns a time before which the last look cannot end; parameters as in {@link Bound#of}. */
    long of(Order order, int[] dipped, int[] read) {
        weigh(dipped);
        if (handsLeft == 0) {
            return Long.MIN_VALUE;
        }
        long waiting = tooEarly(dipped) * leastLook;
        long started = startedBefore(order, dipped, read, waiting);
        looks.clear();
        for (int c = 0; c < before.length; c++) {
            for (int i = read[c]; i < read[c] + before[c]; i++) {
                int strip = jobs.classes[c][i];
                looks.insert(order.started(strip) + jobs.develop[strip], jobs.look[strip]);
            }
        }
        return Math.max(looks.served(order.end(), handsLeft + waiting), order.end() + handsLeft + waiting + started)
                + leastTail;
    }

    private void weigh(int[] dipped) {
        handsLeft = 0;
        leastTail = Long.MAX_VALUE;
        leastLook = Long.MAX_VALUE;
        for (int c = 0; c < dipped.length; c++) {
            int left = jobs.classes[c].length - dipped[c];
            if (left > 0) {
                int strip = jobs.classes[c][0];
                handsLeft += left * jobs.hands[strip];
                leastTail = Math.min(leastTail, jobs.tail(strip));
                leastLook = Math.min(leastLook, jobs.look[strip]);
            }
        }
    }

    /** Returns the looks, in all, of started strips that must be read before; each that must may make another one. */
    private long startedBefore(Order order, int[] dipped, int[] read, long waiting) {
        Arrays.fill(before, 0);
        long looked = 0;
        boolean more = true;
        while (more) {
            more = false;
            for (int c = 0; c < before.length; c++) {
                for (int i = read[c] + before[c]; i < dipped[c]; i++) {
                    int strip = jobs.classes[c][i];
                    if (order.workSince(strip) + handsLeft + waiting + looked
                            <= jobs.develop[strip] + jobs.slack[strip]) {
                        break;
                    }
                    looked += jobs.look[strip];
                    before[c]++;
                    more = true;
                }
            }
        }
        return looked;
    }

    /**
     * Returns how many strips that are not started cannot all be started so late that they are read after the last start.
     *
     * <p>Seen from the last start backwards these are pieces of work with due dates, of which the fewest come late (Moore 1968,
     * Management Science 15): the soonest due first, and where one is late the longest is left out.
     */
    private int tooEarly(int[] dipped) {
        Arrays.fill(after, 0);
        long work = 0;
        int late = 0;
        for (int c : bySpan) {
            for (int i = dipped[c]; i < jobs.classes[c].length; i++) {
                after[c]++;
                work += hands(c);
                if (work > span(c)) {
                    int longest = longest();
                    after[longest]--;
                    work -= hands(longest);
                    late++;
                }
            }
        }
        return late;
    }

    private int longest() {
        int longest = -1;
        for (int c = 0; c < after.length; c++) {
            if (after[c] > 0 && (longest < 0 || hands(c) > hands(longest))) {
                longest = c;
            }
        }
        return longest;
    }

    private long hands(int c) {
        return jobs.hands[jobs.classes[c][0]];
    }

    private long span(int c) {
        int strip = jobs.classes[c][0];
        return jobs.hands[strip] + jobs.develop[strip] + jobs.slack[strip];
    }
}

package wickbench.reading.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What there is to do, as numbers a kind of strip, in milliseconds.
 *
 * <p>Times of a plan that is worth a search fit into an int; {@link #fit} tells whether they do.
 */
final class Kinds {
    /** Above it sums of three times would no longer be safe. */
    private static final long LONGEST = 1 << 29;

    final int count;
    final int[] hands;
    final int[] develop;
    final int[] look;
    /** Until when after its start a strip's look must begin. */
    final int[] latest;
    /** How many strips there are of each kind. */
    final int[] strips;
    /** How many of each kind run already. */
    final int[] running;
    /** The kinds of the strips that run, in the order of their starts. */
    final int[] runningKinds;

    final int[] runningStarts;
    final int freeFrom;
    /** How many pieces of work there are. */
    final int blocks;

    /** @param slack by how much each look may begin after its strip has developed */
    Kinds(Jobs jobs, long[] slack) {
        count = jobs.classes.length;
        hands = ofFirst(jobs, jobs.hands);
        develop = ofFirst(jobs, jobs.develop);
        look = ofFirst(jobs, jobs.look);
        latest = ofFirst(jobs, slack);
        strips = new int[count];
        running = jobs.running.clone();
        List<int[]> begun = new ArrayList<>();
        for (int kind = 0; kind < count; kind++) {
            latest[kind] += develop[kind];
            strips[kind] = jobs.classes[kind].length;
            for (int i = 0; i < running[kind]; i++) {
                begun.add(new int[] {(int) jobs.started[jobs.classes[kind][i]], kind});
            }
        }
        begun.sort(Comparator.comparingInt(strip -> strip[0]));
        runningStarts = begun.stream().mapToInt(strip -> strip[0]).toArray();
        runningKinds = begun.stream().mapToInt(strip -> strip[1]).toArray();
        freeFrom = (int) jobs.freeFrom;
        blocks = jobs.blocks();
    }

    /** Tells whether a plan of this length can be reckoned with. */
    static boolean fit(long total) {
        return total < LONGEST;
    }

    /** Tells whether a strip of one kind, started first, must be read first: exchanging the looks keeps every sum and window. */
    boolean noSlower(int kind, int other) {
        return look[kind] == look[other] && develop[kind] <= develop[other] && latest[kind] <= latest[other];
    }

    private static int[] ofFirst(Jobs jobs, long[] values) {
        return IntStream.range(0, jobs.classes.length)
                .map(kind -> (int) values[jobs.classes[kind][0]])
                .toArray();
    }
}

package wickbench.reading.plan;

import java.util.Arrays;

/** A plan as far as it is decided: which pieces of work come first, and the times that this order leaves to what is open. */
final class Partial {
    /** The last piece of work; null when there is none. */
    final Step last;
    /** How many strips of each kind are started, and read. */
    final int[] dipped;

    final int[] read;
    /** The kinds of the strips that are started and not read, in the order of their starts. */
    final int[] open;

    Zone zone;
    /** The times in which no strip waits longer than {@link #waits} counts; null when there are none. */
    final Zone leastWaits;
    /** How long the strips that are read have waited at least, in all. */
    final long waits;
    /** How long strips wait at least in all plans that go on from here. */
    long allWaits;
    /** No plan that goes on from here ends sooner. */
    int bound;

    private Partial(Step last, int[] dipped, int[] read, int[] open, Zone zone, Zone leastWaits, long waits) {
        this.last = last;
        this.dipped = dipped;
        this.read = read;
        this.open = open;
        this.zone = zone;
        this.leastWaits = leastWaits;
        this.waits = waits;
    }

    /** Returns the plan of which nothing is decided. */
    static Partial nothing(Kinds kinds, boolean countsWaits) {
        Zone zone = Zone.of(kinds.runningStarts, kinds.freeFrom);
        return new Partial(
                null, kinds.running, new int[kinds.count], kinds.runningKinds, zone, countsWaits ? zone : null, 0);
    }

    /** Lets a strip of a kind be started next. */
    Partial start(Kinds kinds, int kind) {
        int[] more = Arrays.copyOf(open, open.length + 1);
        more[open.length] = kind;
        Zone least = leastWaits == null ? null : leastWaits.started(kinds.hands[kind]);
        return new Partial(
                new Step(last, kind), plusOne(dipped, kind), read, more, zone.started(kinds.hands[kind]), least, waits);
    }

    /**
     * Lets an open strip be read next; null when it cannot be in time.
     *
     * @param longer by how much a strip may wait longer than it must
     */
    Partial read(Kinds kinds, int strip, long longer) {
        int kind = open[strip];
        int develop = kinds.develop[kind];
        int look = kinds.look[kind];
        Zone next = zone.read(strip + 1, develop, latest(kinds, strip, longer), look);
        if (next == null) {
            return null;
        }
        int[] fewer = new int[open.length - 1];
        System.arraycopy(open, 0, fewer, 0, strip);
        System.arraycopy(open, strip + 1, fewer, strip, fewer.length - strip);
        int soonest = soonest(kinds, strip);
        Zone least = leastWaits == null ? null : leastWaits.read(strip + 1, develop, soonest, look);
        return new Partial(
                new Step(last, -1 - kind), dipped, plusOne(read, kind), fewer, next, least, waits + soonest - develop);
    }

    private static int[] plusOne(int[] counts, int kind) {
        int[] more = counts.clone();
        more[kind]++;
        return more;
    }

    /** Returns how long after its start the look at an open strip may begin at the soonest. */
    int soonest(Kinds kinds, int strip) {
        return Math.max(zone.free(strip + 1), kinds.develop[open[strip]]);
    }

    /** Returns how long after its start it must begin, when it may wait so much longer than it must. */
    int latest(Kinds kinds, int strip, long longer) {
        return (int) Math.min(kinds.latest[open[strip]], soonest(kinds, strip) + longer);
    }

    /** Returns when the operator is free at the soonest. */
    int free() {
        return zone.free(0);
    }

    /** Leaves only the times in which the operator is free by some time; tells whether there are any. */
    boolean freeBy(int latest) {
        zone = zone.freeBy(latest);
        return zone != null;
    }

    /** Reckons how long strips wait at least, those that are read and those that are open. */
    void addWaits(Kinds kinds, long before) {
        allWaits = waits;
        for (int i = 0; i < open.length; i++) {
            allWaits += soonest(kinds, i) - kinds.develop[open[i]];
        }
        allWaits = Math.max(before, allWaits);
    }

    /** Tells whether every plan that goes on from another one goes on from this one as well, and no worse. */
    boolean betterThan(Partial other, boolean countsWaits) {
        return countsWaits
                ? leastWaits != null && waits <= other.waits && leastWaits.holds(other.zone)
                : zone.holds(other.zone);
    }
}

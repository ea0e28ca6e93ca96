package wickbench.reading.plan;

import java.util.Optional;

/** What a search is after, the least of something, and the best that it has found. */
interface Goal {

    /** Returns by how much each look may begin after its strip has developed. */
    long[] slack();

    /** Tells whether waits count beside the end. */
    boolean countsWaits();

    /** Returns what a plan that goes on from here has at least. */
    long least(Partial plan);

    /** Tells whether a plan that goes on from here may be better than the best. */
    boolean hopes(Partial plan);

    /** Returns by how much one strip may wait longer than a plan counts, in a better plan. */
    long longer(Partial plan);

    /** Returns when a plan ends at the latest that is better. */
    long latestEnd();

    /** Takes a whole order of work, if it is better. */
    void keep(Order order);

    /** Returns what the best has, or what was to be gone below; only less is better. */
    long have();

    /** Begins anew: only what has less than this is looked for. */
    void seek(long below);

    /** Returns the best that was found since. */
    Optional<Found> best();
}

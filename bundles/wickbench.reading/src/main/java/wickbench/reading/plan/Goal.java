package wickbench.reading.plan;

import java.util.Optional;

/** What a search is after, and the best that it has found. */
interface Goal {

    /** Returns by how much each look may begin after its strip has developed. */
    long[] slack();

    /** Returns a time that no block may end after. */
    long cap();

    /** Tells whether it asks an order for its {@link Order#lateness}. */
    boolean countsWaits();

    /** Tells whether an order of which no plan ends before {@code bound} may lead to something better. */
    boolean worth(long bound, Order order);

    /** Takes a whole order, if it is better. */
    void keep(Order order);

    /** Tells whether nothing can be better than what was found. */
    boolean reached();

    Optional<Found> best();
}

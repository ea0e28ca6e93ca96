package wickbench.plant.order;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** What the search found. */
public sealed interface DayOrder {

    /**
     * An order that may be made.
     *
     * @param order products by their place in the table
     * @param total minutes of all changes
     * @param bound minutes below which no order can be; equal to {@code total} when it is proven
     * @param entered minutes of the order in which the products were entered; empty when that one may not be made
     */
    record Found(List<Integer> order, BigDecimal total, BigDecimal bound, Optional<BigDecimal> entered)
            implements DayOrder {
        public Found {
            order = List.copyOf(order);
        }

        /** Tells whether it is proven that no order takes less. */
        public boolean optimal() {
            return total.compareTo(bound) == 0;
        }

        /** Returns what it saves against the entered order; empty when that one may not be made. */
        public Optional<BigDecimal> saving() {
            return entered.map(minutes -> minutes.subtract(total));
        }
    }

    /** It is proven that no order keeps to everything that is asked. */
    record Impossible() implements DayOrder {}

    /** Too many products for a proof, and the search found no order that keeps to everything. */
    record NoneFound() implements DayOrder {}
}

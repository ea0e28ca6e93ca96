package wickbench.plant.order;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Set;

/**
 * A day's products, and what is asked of their order.
 *
 * @param round the line is changed back to the first product in the end, as where the same day comes again and again; then nothing
 *     else can be asked
 * @param places products whose place in the order is fixed, counted from 0
 * @param runs how long a product is made, in minutes; 0 when it is not said
 * @param due by when a product must be finished, in minutes from the start of the first
 * @param before pairs of products, the first of which comes somewhere before the second
 */
public record DayRequest(
        ChangeTable table,
        boolean round,
        Map<Integer, Integer> places,
        Map<Integer, BigDecimal> runs,
        Map<Integer, BigDecimal> due,
        Set<Before> before) {

    /** One product comes somewhere before another. */
    public record Before(int first, int then) {}

    public DayRequest {
        places = Map.copyOf(places);
        runs = Map.copyOf(runs);
        due = Map.copyOf(due);
        before = Set.copyOf(before);
        if (round && !(places.isEmpty() && due.isEmpty() && before.isEmpty())) {
            throw new IllegalArgumentException("a round has no beginning from which anything could be counted");
        }
    }

    /** Asks for nothing but a short day. */
    public static DayRequest of(ChangeTable table, boolean round) {
        return new DayRequest(table, round, Map.of(), Map.of(), Map.of(), Set.of());
    }

    /** Tells whether anything is asked that an order could fail, beside forbidden changes. */
    boolean asks() {
        return !(places.isEmpty() && due.isEmpty() && before.isEmpty());
    }
}

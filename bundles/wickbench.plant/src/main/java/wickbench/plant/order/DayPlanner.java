package wickbench.plant.order;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds the order of a day's products that takes the least time for changes. */
public final class DayPlanner {
    /** Up to so many products the shortest order is found and proven. */
    public static final int PROVEN = SubsetSearch.MOST;

    private DayPlanner() {}

    /** Plans a day; the same request gives the same answer. */
    public static DayOrder plan(DayRequest request) {
        Rules rules = new Rules(request);
        return request.table().size() <= PROVEN ? proven(rules) : bounded(rules);
    }

    private static DayOrder proven(Rules rules) {
        return SubsetSearch.order(rules)
                .<DayOrder>map(order -> found(rules, order, total(rules, order)))
                .orElseGet(DayOrder.Impossible::new);
    }

    private static DayOrder bounded(Rules rules) {
        long bound = Assignment.bound(rules);
        if (bound >= ChangeTable.NEVER / (rules.table().size() + 1)) {
            return new DayOrder.Impossible();
        }
        return Improving.order(rules)
                .<DayOrder>map(order -> found(rules, order, bound))
                .orElseGet(DayOrder.NoneFound::new);
    }

    private static DayOrder found(Rules rules, int[] order, long bound) {
        int[] entered = IntStream.range(0, order.length).toArray();
        return new DayOrder.Found(
                Arrays.stream(order).boxed().toList(),
                ChangeTable.minutes(total(rules, order)),
                ChangeTable.minutes(bound),
                rules.faults(entered) == 0
                        ? Optional.of(ChangeTable.minutes(total(rules, entered)))
                        : Optional.empty());
    }

    private static long total(Rules rules, int[] order) {
        return rules.table().total(order, rules.round());
    }
}

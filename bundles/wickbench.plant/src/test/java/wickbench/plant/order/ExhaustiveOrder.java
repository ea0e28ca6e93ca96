package wickbench.plant.order;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Tries every order, by the words of the request alone; shares nothing with the search. */
final class ExhaustiveOrder {
    private final DayRequest request;
    private final int n;
    private Optional<BigDecimal> least = Optional.empty();

    private ExhaustiveOrder(DayRequest request) {
        this.request = request;
        n = request.table().products().size();
    }

    /** Returns the minutes of the shortest order; empty when none keeps to everything. */
    static Optional<BigDecimal> least(DayRequest request) {
        ExhaustiveOrder all = new ExhaustiveOrder(request);
        all.extend(new ArrayList<>());
        return all.least;
    }

    private void extend(List<Integer> order) {
        if (order.size() == n) {
            minutes(request, order)
                    .filter(minutes ->
                            least.map(best -> minutes.compareTo(best) < 0).orElse(true))
                    .ifPresent(minutes -> least = Optional.of(minutes));
            return;
        }
        for (int product = 0; product < n; product++) {
            if (!order.contains(product)) {
                order.add(product);
                extend(order);
                order.remove(order.size() - 1);
            }
        }
    }

    /** Returns the minutes of an order; empty when it may not be made. */
    static Optional<BigDecimal> minutes(DayRequest request, List<Integer> order) {
        BigDecimal changes = BigDecimal.ZERO;
        BigDecimal clock = BigDecimal.ZERO;
        for (int place = 0; place < order.size(); place++) {
            int product = order.get(place);
            if (place > 0) {
                Optional<BigDecimal> change = request.table().minutes(order.get(place - 1), product);
                if (change.isEmpty()) {
                    return Optional.empty();
                }
                changes = changes.add(change.get());
                clock = clock.add(change.get());
            }
            clock = clock.add(request.runs().getOrDefault(product, BigDecimal.ZERO));
            BigDecimal due = request.due().get(product);
            if (due != null && clock.compareTo(due) > 0) {
                return Optional.empty();
            }
        }
        for (Map.Entry<Integer, Integer> fixed : request.places().entrySet()) {
            if (!order.get(fixed.getValue()).equals(fixed.getKey())) {
                return Optional.empty();
            }
        }
        boolean inOrder =
                request.before().stream().allMatch(pair -> order.indexOf(pair.first()) < order.indexOf(pair.then()));
        if (!inOrder) {
            return Optional.empty();
        }
        if (request.round() && order.size() > 1) {
            return request.table()
                    .minutes(order.get(order.size() - 1), order.get(0))
                    .map(changes::add);
        }
        return Optional.of(changes);
    }
}

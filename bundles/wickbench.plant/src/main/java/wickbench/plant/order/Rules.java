package wickbench.plant.order;

import java.util.Arrays;
import java.util.List;

/** What is asked of an order, laid out for the search: times in thousandths of a minute, products as bits. */
final class Rules {
    private final ChangeTable table;
    private final boolean round;
    private final int[] fixed;
    private final int[] holder;
    private final long[] runs;
    private final long[] due;
    private final List<DayRequest.Before> before;

    Rules(DayRequest request) {
        table = request.table();
        round = request.round();
        int n = table.size();
        fixed = new int[n];
        holder = new int[n];
        Arrays.fill(fixed, -1);
        Arrays.fill(holder, -1);
        request.places().forEach((product, place) -> {
            fixed[product] = place;
            holder[place] = product;
        });
        runs = new long[n];
        due = new long[n];
        Arrays.fill(due, ChangeTable.NEVER);
        request.runs().forEach((product, minutes) -> runs[product] = ChangeTable.thousandths(minutes));
        request.due().forEach((product, minutes) -> due[product] = ChangeTable.thousandths(minutes));
        before = List.copyOf(request.before());
    }

    ChangeTable table() {
        return table;
    }

    boolean round() {
        return round;
    }

    long runs(int product) {
        return runs[product];
    }

    boolean inTime(int product, long finished) {
        return finished <= due[product];
    }

    /** Whether a product may stand at a place. */
    boolean fits(int product, int place) {
        return holder[place] == product || (holder[place] < 0 && fixed[product] < 0);
    }

    /** Returns the products that come before this one, as bits. */
    int earlier(int product) {
        return before.stream()
                .filter(pair -> pair.then() == product)
                .mapToInt(pair -> 1 << pair.first())
                .reduce(0, (some, other) -> some | other);
    }

    /** Counts what an order fails of all that is asked; forbidden changes too. */
    int faults(int[] order) {
        int faults = 0;
        long finished = 0;
        int[] placeOf = new int[order.length];
        for (int place = 0; place < order.length; place++) {
            int product = order[place];
            placeOf[product] = place;
            if (place > 0) {
                boolean allowed = table.allowed(order[place - 1], product);
                faults += allowed ? 0 : 1;
                finished += allowed ? table.cost(order[place - 1], product) : 0;
            }
            finished += runs[product];
            faults += fits(product, place) ? 0 : 1;
            faults += inTime(product, finished) ? 0 : 1;
        }
        for (DayRequest.Before pair : before) {
            faults += placeOf[pair.first()] < placeOf[pair.then()] ? 0 : 1;
        }
        boolean closes = !round || order.length == 1 || table.allowed(order[order.length - 1], order[0]);
        return faults + (closes ? 0 : 1);
    }
}

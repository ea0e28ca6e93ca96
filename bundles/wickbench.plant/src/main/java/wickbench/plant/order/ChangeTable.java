package wickbench.plant.order;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What it takes to change a line from one product to another: the clean and its tests, in minutes.
 *
 * <p>From A to B need not take what B to A takes. A change that must not be made, because no clean for it was validated or no
 * method covers it, has no time.
 */
public final class ChangeTable {
    /** More products than any line sees in a day; the bound of 400 products takes a second. */
    public static final int MOST = 400;

    /** Thousandths of a minute: minutes are added exactly, so that equal orders are equal. */
    private static final int DIGITS = 3;

    /** No change: larger than any sum of changes that may be made. */
    static final long NEVER = Long.MAX_VALUE / 4;

    private static final BigDecimal LONGEST = BigDecimal.valueOf(1_000_000);

    private final List<String> products;
    private final long[][] cost;

    /**
     * @param minutes a row for each product that was made, a column for each that follows; empty where that is forbidden. The
     *     diagonal says nothing
     * @throws IllegalArgumentException when it is no square, a time is negative, above a million, or has more than three decimals
     */
    public ChangeTable(List<String> products, List<List<Optional<BigDecimal>>> minutes) {
        this.products = List.copyOf(products);
        if (products.size() > MOST || minutes.size() != products.size()) {
            throw new IllegalArgumentException("not a table of up to " + MOST + " products");
        }
        cost = new long[products.size()][products.size()];
        for (int from = 0; from < cost.length; from++) {
            if (minutes.get(from).size() != cost.length) {
                throw new IllegalArgumentException("row " + from + " has another number of columns");
            }
            for (int to = 0; to < cost.length; to++) {
                cost[from][to] = from == to
                        ? NEVER
                        : minutes.get(from)
                                .get(to)
                                .map(ChangeTable::thousandths)
                                .orElse(NEVER);
            }
        }
    }

    /** Tells whether it is a time this table takes: 0 to a million minutes, three decimals at most. */
    public static boolean isTime(BigDecimal minutes) {
        return minutes.signum() >= 0
                && minutes.compareTo(LONGEST) <= 0
                && minutes.stripTrailingZeros().scale() <= DIGITS;
    }

    static long thousandths(BigDecimal minutes) {
        if (!isTime(minutes)) {
            throw new IllegalArgumentException("no time of a change: " + minutes.toPlainString());
        }
        return minutes.movePointRight(DIGITS).longValueExact();
    }

    static BigDecimal minutes(long thousandths) {
        BigDecimal minutes = BigDecimal.valueOf(thousandths, DIGITS).stripTrailingZeros();
        return minutes.scale() < 0 ? minutes.setScale(0) : minutes;
    }

    public List<String> products() {
        return products;
    }

    /** Returns the minutes of a change; empty when it is forbidden. */
    public Optional<BigDecimal> minutes(int from, int to) {
        return allowed(from, to) ? Optional.of(minutes(cost[from][to])) : Optional.empty();
    }

    boolean allowed(int from, int to) {
        return cost[from][to] < NEVER;
    }

    /** In thousandths of a minute. */
    long cost(int from, int to) {
        return cost[from][to];
    }

    int size() {
        return cost.length;
    }

    /** Returns the time of an order, back to its first product if it is a round; {@link #NEVER} or more when a change in it is forbidden. */
    long total(int[] order, boolean round) {
        long total = round ? cost[order[order.length - 1]][order[0]] : 0;
        for (int place = 1; place < order.length; place++) {
            total = Math.min(NEVER, total) + cost[order[place - 1]][order[place]];
        }
        return order.length == 1 ? 0 : Math.min(NEVER, total);
    }

    @Override
    public String toString() {
        return products + " " + Arrays.deepToString(cost);
    }
}

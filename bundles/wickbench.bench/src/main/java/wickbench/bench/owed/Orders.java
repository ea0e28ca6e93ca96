package wickbench.bench.owed;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;
import wickbench.api.owed.Ordered;
import wickbench.api.reading.Owed;
import wickbench.api.words.Coded;
import wickbench.reading.owed.Fact;
import wickbench.reading.owed.Fact.Decided;
import wickbench.reading.owed.Fact.Tested;

/** What authorised people ordered beyond what verdicts ask for. An order after a decision opens anew what that had ended. */
final class Orders {
    /** The newest order of a thing, with the decisions that it came after. */
    private record Order(UUID owes, Owed owed, Set<UUID> overtaken) {}

    private final Map<UUID, Map<Owed, Order>> newest = new LinkedHashMap<>();

    static Orders read(Rows rows) {
        Orders orders = new Orders();
        rows.read(
                        "SELECT id, target, what FROM fact WHERE kind = ? ORDER BY written, station, seq",
                        row -> order(row, rows),
                        Ordered.KIND)
                .forEach(order -> orders.newest
                        .computeIfAbsent(order.owes(), id -> new LinkedHashMap<>())
                        .put(order.owed(), order));
        return orders;
    }

    private static Order order(Row row, Rows rows) {
        UUID owes = row.uuid("target");
        String what = row.text("what");
        List<UUID> before = rows.read(
                "SELECT s.id FROM fact s JOIN fact o ON o.id = ? WHERE s.kind = 'owed.settled' AND s.target = ?"
                        + " AND s.what = ? AND (s.written, s.station, s.seq) < (o.written, o.station, o.seq)",
                settled -> settled.uuid("id"),
                row.uuid("id"),
                owes,
                what);
        return new Order(owes, Coded.of(Owed.class, what), Set.copyOf(before));
    }

    /** Returns a test that owes what was ordered too. */
    Tested added(Tested test) {
        Map<Owed, Order> ordered = newest.getOrDefault(test.id(), Map.of());
        if (ordered.isEmpty()) {
            return test;
        }
        Set<Owed> owed = EnumSet.copyOf(ordered.keySet());
        owed.addAll(test.owed());
        return new Tested(
                test.id(),
                test.at(),
                test.sample(),
                test.spot(),
                test.method(),
                test.lot(),
                test.operator(),
                test.dilution(),
                test.control(),
                test.reason(),
                test.outcome(),
                test.sign(),
                owed);
    }

    /** Tells whether a fact is a decision after which the same was ordered again. */
    boolean overtakes(Fact fact) {
        return fact instanceof Decided decided
                && newest.getOrDefault(decided.owes(), Map.of()).containsKey(decided.owed())
                && newest.get(decided.owes()).get(decided.owed()).overtaken().contains(decided.id());
    }
}

package wickbench.bench.owed;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import wickbench.api.index.Rows;
import wickbench.api.owed.OwedItem;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.reading.owed.Fact;
import wickbench.reading.owed.Fact.Tested;
import wickbench.reading.owed.OwedFold;

/**
 * What is owed by the facts that were read so far: only rows that have come since are read, and folded with the others.
 *
 * <p>Rows never change, and those of a station come in the order of their numbers. So as many as were counted are the same ones.
 */
final class KnownFacts {
    private final Map<String, Long> last = new HashMap<>();
    private final Map<UUID, List<FactRow>> tests = new LinkedHashMap<>();
    private final List<Fact> others = new ArrayList<>();
    private long known;
    private List<OwedItem> items = List.of();

    /** Returns everything that is owed or was. */
    List<OwedItem> items(Rows rows) {
        long count = FactTable.count(rows);
        if (count != known) {
            Map.copyOf(last)
                    .forEach((station, seq) ->
                            FactTable.after(station, seq, rows).forEach(this::take));
            if (count != known) {
                // another station told for the first time, or the tables were made anew
                forget();
                FactTable.all(rows).forEach(this::take);
            }
            items = OwedFold.of(facts(Orders.read(rows)));
        }
        return items;
    }

    private void take(FactRow row) {
        known++;
        last.put(row.station(), row.seq());
        for (Fact fact : row.facts()) {
            if (fact instanceof Tested test) {
                tests.computeIfAbsent(test.id(), first -> new ArrayList<>(1)).add(row);
            } else {
                others.add(fact);
            }
        }
    }

    private void forget() {
        known = 0;
        last.clear();
        tests.clear();
        others.clear();
    }

    /** Each reading as it stands after its corrections, owing what was ordered too. */
    private List<Fact> facts(Orders orders) {
        List<Fact> facts = new ArrayList<>(others);
        facts.removeIf(orders::overtakes);
        tests.values()
                .forEach(said -> facts.add(orders.added(said.stream()
                        .sorted(FactRow.ORDER)
                        .map(row -> (Tested) row.facts().get(0))
                        .reduce(KnownFacts::corrected)
                        .orElseThrow())));
        return facts;
    }

    /** What a reading once held for is owed on, whatever a correction says. */
    private static Tested corrected(Tested before, Tested now) {
        boolean held = before.outcome().positive() || before.sign();
        Set<Owed> owed = EnumSet.noneOf(Owed.class);
        owed.addAll(now.owed());
        if (held) {
            owed.addAll(before.owed());
            owed.remove(Owed.REPEAT);
            owed.addAll(now.outcome() == Outcome.INVALID ? Set.of(Owed.REPEAT) : Set.of());
        }
        return new Tested(
                now.id(),
                now.at(),
                now.sample(),
                now.spot(),
                now.method(),
                now.lot(),
                now.operator(),
                now.dilution(),
                now.control(),
                now.reason(),
                now.outcome(),
                now.sign(),
                owed);
    }
}

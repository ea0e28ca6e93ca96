package wickbench.stock.room;

import java.math.BigDecimal;
import java.util.Map;
import java.util.TreeMap;
import wickbench.api.words.Decimals;
import wickbench.stock.Balance;
import wickbench.stock.Count;
import wickbench.stock.Lot;
import wickbench.stock.Part;

/** A count beside what should be there. */
final class Counting {
    private Counting() {}

    static LotEvent event(Count count, Lot lot) {
        if (count.pouches() < 0 || count.loose() < 0) {
            throw Said.wrong("count.negative");
        }
        Map<String, BigDecimal> expected = new TreeMap<>();
        boolean differs = differs(lot.strips(), found(count, lot.strips().part()), expected);
        for (var other : count.others().entrySet()) {
            differs |= differs(balance(lot, other.getKey()), other.getValue(), expected);
        }
        if (differs && count.reason().filter(reason -> !reason.isBlank()).isEmpty()) {
            throw Said.wrong(
                    "count.differs",
                    Decimals.of(expected.get(lot.strips().part().name())),
                    Decimals.of(found(count, lot.strips().part())));
        }
        return new LotEvent.Counted(
                count.lot(), count.at(), count.pouches(), count.loose(), count.others(), expected, count.reason());
    }

    private static BigDecimal found(Count count, Part strip) {
        return strip.perPouch().multiply(BigDecimal.valueOf(count.pouches())).add(BigDecimal.valueOf(count.loose()));
    }

    private static Balance balance(Lot lot, String part) {
        return lot.parts().stream()
                .filter(each -> !each.part().strip() && each.part().name().equals(part))
                .findFirst()
                .orElseThrow(() -> Said.wrong("part.unknown", part, lot.kit().name()));
    }

    private static boolean differs(Balance balance, BigDecimal found, Map<String, BigDecimal> expected) {
        if (found.signum() < 0) {
            throw Said.wrong("count.negative");
        }
        BigDecimal should = balance.left().subtract(balance.missing());
        expected.put(balance.part().name(), should);
        return found.compareTo(should) != 0;
    }
}

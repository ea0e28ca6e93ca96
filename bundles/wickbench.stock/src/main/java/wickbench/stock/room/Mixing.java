package wickbench.stock.room;

import java.util.Map;
import wickbench.api.lot.LotId;
import wickbench.stock.Lot;

/** Where a kit forbids it, strips are used with the liquids of their own box only. */
final class Mixing {
    private Mixing() {}

    static void check(Lot lot, Map<String, LotId> with) {
        with.forEach((part, other) -> {
            lot.kit()
                    .part(part)
                    .filter(known -> !known.strip())
                    .orElseThrow(
                            () -> Said.wrong("part.unknown", part, lot.kit().name()));
            boolean own = other.equals(lot.id())
                    || lot.companions().stream()
                            .anyMatch(each ->
                                    each.part().equals(part) && each.lot().equals(other));
            if (!own && !lot.kit().mayMix()) {
                throw Said.refused("lot.mixed", part, other, lot.id());
            }
        });
    }
}

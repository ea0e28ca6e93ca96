package wickbench.stock.room;

import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;
import wickbench.api.journal.EntryRef;

/**
 * An event with the entry that tells it.
 *
 * @param written when the entry was written
 */
record Told(EntryRef entry, UUID id, Instant written, boolean signed, LotEvent event) {
    /** By when it was done; of what was done at once, by when it was written. The order in which entries came never matters. */
    static final Comparator<Told> IN_ORDER = Comparator.comparing(
                    (Told told) -> told.event().at())
            .thenComparing(Told::written)
            .thenComparing(told -> told.entry().station())
            .thenComparing(told -> told.entry().seq());
}

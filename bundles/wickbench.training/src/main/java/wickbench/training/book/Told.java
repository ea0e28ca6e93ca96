package wickbench.training.book;

import java.time.Instant;
import java.util.Comparator;
import java.util.UUID;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;

/**
 * What an entry says.
 *
 * @param written when the entry was written
 * @param at when it was done
 */
public record Told(
        EntryRef entry, UUID id, Instant written, PersonId by, boolean signed, Instant at, String kind, Json.Obj body) {
    /** By when it was done; of what was done at once, by when it was written. The order in which entries came never matters. */
    public static final Comparator<Told> IN_ORDER = Comparator.comparing(Told::at)
            .thenComparing(Told::written)
            .thenComparing(told -> told.entry().station())
            .thenComparing(told -> told.entry().seq());

    public Fields fields() {
        return Fields.of(entry.toString(), body);
    }

    public boolean is(String other) {
        return kind.equals(other);
    }
}

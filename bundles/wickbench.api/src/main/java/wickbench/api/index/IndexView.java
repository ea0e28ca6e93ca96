package wickbench.api.index;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.osgi.annotation.versioning.ConsumerType;
import wickbench.api.clash.Decision;
import wickbench.api.journal.Entry;

/**
 * A bundle's own tables, made from the entries that it understands.
 *
 * <p>Contributed as a service. Each view has a schema of its own, its own position in the journal and its own transaction; one
 * that fails falls behind alone. The law: whatever was rebuilt equals what was kept, so {@link #apply} depends on nothing but
 * the entries, and makes no keys of its own.
 *
 * <p>Entries of other stations come in any order. Within a station {@code seq} rules, an entry applies after every entry that it
 * {@link #names}, and (at, station, seq) orders the rest. One that comes late is put in its place by folding its
 * {@link #subjects} again: the index calls {@link #forget} for them and applies all their entries in order. Where one station
 * keeps the only journal, none of this is asked.
 */
@ConsumerType
public interface IndexView {

    /** Returns the schema's name: lower-case letters and underscores, one a bundle. */
    String name();

    /** Returns the version of these tables; when it changes, the view is rebuilt. */
    int version();

    /** Returns the statements that make the tables, in standard SQL, without schema names. */
    List<String> tables();

    /** Takes one entry; kinds and versions that it does not know are passed over. */
    void apply(Entry entry, Rows rows);

    /**
     * Returns the subjects whose rows an entry changes, for example {@code method:nut-swab}: the keys of what is folded from
     * several entries.
     *
     * <p>Depends on the entry alone. Empty when it changes nothing, or when its rows are the same whatever came before or comes
     * after, as with a table that has a row for each entry.
     */
    Set<String> subjects(Entry entry);

    /**
     * Deletes every row that entries of a subject have made, or makes them as if there had been none.
     *
     * <p>An entry with several subjects ties them together: they are forgotten and folded again as one.
     *
     * @throws IllegalStateException where no subjects are declared
     */
    default void forget(String subject, Rows rows) {
        throw new IllegalStateException(name() + " has no subject " + subject);
    }

    /** Returns the ids of the entries that an entry names and of which it must come after, such as what it corrects. */
    default Set<UUID> names(Entry entry) {
        return Set.of();
    }

    /** Returns what an entry decides; empty when another station's entry cannot clash with it. */
    default Optional<Decision> decision(Entry entry) {
        return Optional.empty();
    }
}

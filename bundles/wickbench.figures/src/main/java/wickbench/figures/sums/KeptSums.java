package wickbench.figures.sums;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;

/** Sums that somebody wanted to keep: entries of the journal, each with what it was reckoned from. */
@ProviderType
public interface KeptSums {

    /**
     * Keeps what a sum has given.
     *
     * @param by who keeps it
     * @param about what it was for; at most 500 characters
     * @throws wickbench.api.check.BadInput when there is too much of it to be kept
     * @throws wickbench.api.check.Refusal when the journal refuses
     */
    EntryRef keep(PersonId by, Sum sum, Reckoned.Done done, Optional<String> about);

    /**
     * Returns what was kept, the newest first.
     *
     * @param most how many at most
     */
    List<Kept> newest(int most);

    /** Returns what stands in one entry, if it is a kept sum. */
    Optional<Kept> find(EntryRef entry);

    /**
     * A kept sum and its entry.
     *
     * @param by who kept it
     * @param at when it was kept
     */
    record Kept(EntryRef entry, PersonId by, Instant at, KeptSum what) {}
}

package wickbench.api.journal;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.progress.Progress;

/**
 * The journals of a site as this station holds them: its own, to append to, and those it has read of others.
 *
 * <p>The home is opened at first use. Every method throws {@link wickbench.api.check.Refusal} with code {@code home.held} when
 * another program holds the home, {@code journal.tampered} when what is there contradicts its seal, and {@code journal.failed}
 * when the disk refused; the text names holder, place or reason. Safe for use by several threads.
 */
@ProviderType
public interface Journal {

    /** Returns how this station was founded; empty before its first entry. */
    Optional<Founding> founding();

    /**
     * Writes the first entry.
     *
     * @throws wickbench.api.check.Refusal when there is one already
     */
    Founding found(Founding wanted);

    /** Returns the stations whose entries are here; this station first. */
    List<StationId> stations();

    /** Returns how many entries of a station are here. */
    long size(StationId station);

    /**
     * Appends entries, all or none, and returns once they are on the disk.
     *
     * <p>A home not yet founded is founded first, with the defaults of {@link Founding#defaults}. The entries of one call follow
     * one another without a gap.
     *
     * @throws wickbench.api.check.Refusal {@code journal.failed} when the disk refused; nothing counts as recorded then
     */
    List<Entry> append(List<Draft> drafts);

    /**
     * Reads a station's entries in order until there are no more or the reader has enough.
     *
     * @param from the first place to read, from 0
     * @param reader returns false when it has enough
     */
    void read(StationId station, long from, Predicate<Entry> reader);

    Optional<Entry> entry(EntryRef ref);

    /** Returns the line of an entry as it stands in the file, without its line end. */
    Optional<String> line(EntryRef ref);

    /** Signs what is there now; returns the newest checkpoint, empty before the first entry. */
    Optional<Checkpoint> checkpoint();

    /**
     * Returns a checkpoint over what is here of a station: of this station one signed now, of another the newest that came with
     * its entries; empty where there is none.
     */
    default Optional<Checkpoint> checkpoint(StationId station) {
        return stations().stream().limit(1).anyMatch(station::equals) ? checkpoint() : Optional.empty();
    }

    /** Returns the SHA-256 of a station's public key: of this one, or as it was pinned for another; empty where it is not known. */
    default Optional<Hash> keyFingerprint(StationId station) {
        return Optional.empty();
    }

    /** Returns what a person wants to know of the journal at a glance. */
    JournalStatus status();

    /** Reads everything again and proves or disproves it. */
    Verification verify(Progress progress);
}

package wickbench.ledger.papers;

import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.progress.Progress;
import wickbench.ledger.Filter;

/** Makes audit packs; reads journals and files, so never on the screen's thread. */
@ProviderType
public interface Packing {

    /**
     * What is to be packed.
     *
     * @param filter which results
     * @param everything all entries of all stations, whatever they are about: the form for an archive
     * @param folder not there yet, or empty
     */
    record Wanted(Filter filter, boolean everything, Path folder) {}

    /**
     * What was packed.
     *
     * @param entry the entry {@code pack.made}
     * @param entries how many are in it, without that one
     * @param attachments how many files are in it
     * @param seals a checkpoint of each station drawn from, with the fingerprint of its key
     * @param missing attachments whose files are not here as they were added
     */
    record Packed(EntryRef entry, Path folder, long entries, long attachments, List<Sealed> seals, List<Hash> missing) {
        public Packed {
            seals = List.copyOf(seals);
            missing = List.copyOf(missing);
        }
    }

    /** A station's checkpoint. */
    record Sealed(Checkpoint checkpoint, Hash fingerprint) {}

    /**
     * Packs; the folder is whole or not there afterwards.
     *
     * @param by who hands it out; everybody may
     * @throws wickbench.api.check.Refusal {@code pack.folder} when the folder holds something, {@code pack.nothing} when no result
     *     passes the filter, {@code pack.stopped} when the watcher stopped it, or as {@link wickbench.api.journal.Proofs} says
     */
    Packed pack(Wanted wanted, PersonId by, Progress progress);

    /**
     * How long records are kept.
     *
     * @param records what sort of records, as a code
     * @param entries how many there are
     * @param oldest when the oldest was written
     * @param years how long they are kept at least after the newest of them, or after their use ended
     * @param until before when none of them may go; empty while they are in use
     */
    record Kept(String records, long entries, Optional<Instant> oldest, int years, Optional<Instant> until) {
        private static final DateTimeFormatter MILLIS =
                new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

        public Json.Obj json() {
            return Json.object()
                    .with("records", records)
                    .with("entries", entries)
                    .withText("oldest", oldest.map(MILLIS::format))
                    .with("years", years)
                    .withText("until", until.map(MILLIS::format));
        }
    }

    /** Tells how long each sort of records is kept; the program itself deletes none. */
    List<Kept> kept(Progress progress);
}

package wickbench.stock;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.authority.Actor;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.api.progress.Progress;

/** The fridges and what their loggers say. Refuses as {@link Stockkeeping} does. */
@ProviderType
public interface Fridges {

    /** Returns all, by id. */
    List<Fridge> all();

    /** Registers a fridge, or says anew what range it keeps; its lots and readings are not looked at. */
    Fridge register(Fridge fridge, Actor by);

    /**
     * Takes a logger's file in, whatever its size, and quarantines the lots inside that it speaks against.
     *
     * <p>The entry names the file by its SHA-256; the file itself is attached to it where that can be done.
     *
     * @param said what the file does not tell itself; remembered for the next one
     * @throws wickbench.api.check.BadInput where the file is wrong or could be read in two ways; nothing is kept then
     */
    Imported read(Path file, String fridge, LogShape said, Progress progress, Actor by);

    /** Takes in what a thermometer with memory showed as lowest and highest since it was last set back. */
    Imported measured(String fridge, Instant from, Instant to, BigDecimal low, BigDecimal high, Actor by);

    /** Returns what a fridge did. */
    FridgeTrace trace(String fridge, Instant from, Instant to);

    /**
     * What taking a file in has done.
     *
     * @param added false when the same file was taken in before
     * @param complete false when the watcher stopped it; nothing is kept then
     * @param found what lies outside the fridge's range
     * @param quarantined lots that now wait for a decision
     * @param unattached why the file does not lie beside its entry; empty when it does, and of what is no file
     */
    record Imported(
            Optional<EntryRef> entry,
            boolean added,
            boolean complete,
            long rows,
            Instant from,
            Instant to,
            List<Excursion> found,
            List<LotId> quarantined,
            Optional<String> unattached) {
        public Imported {
            found = List.copyOf(found);
            quarantined = List.copyOf(quarantined);
        }
    }
}

package wickbench.api.journal;

import java.nio.file.Path;
import java.util.OptionalLong;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.progress.Progress;

/**
 * Proves what the journals of this home hold, to people who need not believe this program.
 *
 * <p>Safe for use by several threads. The first proof after much was recorded reads it once; each further one takes microseconds.
 * Throws {@link wickbench.api.check.Refusal} as {@link Journal} does.
 */
@ProviderType
public interface Proofs {

    /**
     * Proves that an entry is under its station's newest checkpoint; of this station, one of now is signed first.
     *
     * @param against the size of an older checkpoint, such as that of a report, under which it is to be proved too
     * @throws wickbench.api.check.Refusal {@code proof.absent} when there is no such entry, {@code proof.against} when it came
     *     after that checkpoint or there is no such size, {@code proof.unsealed} when no checkpoint covers it yet
     */
    EntryProof prove(EntryRef entry, OptionalLong against);

    /**
     * Holds a checkpoint that was kept elsewhere against what is here.
     *
     * @param checkpoint the signed text, or {@code STATION SIZE ROOT} as people type it, the root in hexadecimal or base64
     */
    Comparison compare(String checkpoint);

    /**
     * Writes a station's journal as C2SP tlog-tiles, which other programs read.
     *
     * @param folder not there yet, or empty; it is whole or not there afterwards
     * @return the checkpoint over what was written
     * @throws wickbench.api.check.Refusal {@code export.folder} when the folder holds something, {@code export.too-long} when an
     *     entry is longer than the format allows, {@code export.stopped} when the watcher stopped it
     */
    Checkpoint exportTiles(StationId station, Path folder, Progress progress);
}

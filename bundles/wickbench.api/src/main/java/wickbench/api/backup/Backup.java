package wickbench.api.backup;

import java.nio.file.Path;
import java.time.Instant;
import wickbench.api.journal.Checkpoint;

/**
 * A whole back-up.
 *
 * @param folder where it lies
 * @param made when, by the clock of the home
 * @param checkpoint what of this station's journal is in it
 */
public record Backup(Path folder, Instant made, Checkpoint checkpoint) {}

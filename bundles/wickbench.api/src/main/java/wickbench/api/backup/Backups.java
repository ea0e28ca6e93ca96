package wickbench.api.backup;

import java.nio.file.Path;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.progress.Progress;

/**
 * Makes back-ups of the home, and homes of back-ups.
 *
 * <p>Safe for use by several threads; one back-up is made at a time. A back-up holds the key that this station signs with and the
 * hashes of passphrases, so it is to be guarded as the home is. Throws {@link wickbench.api.check.Refusal} as
 * {@link wickbench.api.journal.Journal} does.
 */
@ProviderType
public interface Backups {

    /**
     * Copies the home while it may be recorded in, and verifies the copy.
     *
     * @param folder not there yet, or empty; it is whole or not there afterwards
     * @throws wickbench.api.check.Refusal {@code backup.folder} when the folder holds something or lies in the home,
     *     {@code backup.stopped} when the watcher stopped it
     */
    Backup backUp(Path folder, Progress progress);

    /** Makes a back-up in a folder of its own, named by station and time, within another folder. */
    Backup backUpInto(Path folder, Progress progress);

    /** Makes a back-up of now by the plan, and removes those that are too many. */
    Backup backUpByPlan(Progress progress);

    /** Sets the plan, or none. */
    void plan(Optional<BackupPlan> plan);

    BackupState state();

    /**
     * Makes a home of a back-up, after proving every file and verifying the whole journal.
     *
     * @param home not there yet, or empty
     * @param known a checkpoint known from elsewhere, so that what came after the back-up is counted
     * @throws wickbench.api.check.Refusal {@code restore.folder} when the home holds something, {@code restore.damaged} when the
     *     back-up is not whole, {@code backup.stopped} when the watcher stopped it; the home is not there then
     */
    Restored restore(Path backup, Path home, Optional<String> known, Progress progress);
}

package wickbench.api.backup;

import java.nio.file.Path;
import java.util.Optional;
import wickbench.api.journal.Comparison;
import wickbench.api.journal.Verification;

/**
 * A home made from a back-up.
 *
 * @param folder the home
 * @param from the back-up as it says of itself
 * @param verification what reading everything again has shown; it holds
 * @param known what came of a checkpoint that is known from elsewhere; empty when none was given
 */
public record Restored(Path folder, Backup from, Verification verification, Optional<Comparison> known) {}

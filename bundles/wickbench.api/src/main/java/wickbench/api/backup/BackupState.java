package wickbench.api.backup;

import java.time.Duration;
import java.util.Optional;

/**
 * How a home stands with its back-ups.
 *
 * @param plan empty where nobody made one
 * @param last the newest whole back-up; empty before the first
 * @param age of the newest; empty before the first
 * @param due whether the plan asks for one now
 */
public record BackupState(Optional<BackupPlan> plan, Optional<Backup> last, Optional<Duration> age, boolean due) {}

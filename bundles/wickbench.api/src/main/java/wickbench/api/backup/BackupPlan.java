package wickbench.api.backup;

import java.nio.file.Path;
import java.time.Duration;

/**
 * When back-ups are made without being asked for.
 *
 * @param folder in which each gets a folder of its own; best on another machine
 * @param days between two of them, from 1 to 90
 * @param keep how many of the newest stay, from 1 to 1,000; older ones are removed once a new one is whole
 */
public record BackupPlan(Path folder, int days, int keep) {
    private static final int MOST_DAYS = 90;
    private static final int MOST_KEPT = 1_000;

    public BackupPlan {
        if (days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException("expected 1 to " + MOST_DAYS + " days, found " + days);
        }
        if (keep < 1 || keep > MOST_KEPT) {
            throw new IllegalArgumentException("expected to keep 1 to " + MOST_KEPT + ", found " + keep);
        }
    }

    public Duration every() {
        return Duration.ofDays(days);
    }
}

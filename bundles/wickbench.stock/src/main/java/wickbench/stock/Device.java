package wickbench.stock;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wickbench.api.words.Coded;

/**
 * Equipment with a calibration that falls due.
 *
 * @param id the site's own
 * @param calibrated when last
 * @param due the last local day on which that holds
 * @param certificate its number, if stated
 * @param retired when it was taken out of use
 */
public record Device(
        String id,
        Type type,
        String name,
        LocalDate calibrated,
        LocalDate due,
        Optional<String> certificate,
        Optional<Instant> retired) {

    /** What it is. */
    public enum Type implements Coded {
        LOGGER,
        PIPETTE,
        BALANCE,
        TIMER,
        OTHER
    }

    public boolean overdue(LocalDate today) {
        return retired.isEmpty() && today.isAfter(due);
    }
}

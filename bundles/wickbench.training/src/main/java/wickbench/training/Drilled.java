package wickbench.training;

import java.time.Instant;
import java.util.Set;
import wickbench.api.journal.EntryRef;
import wickbench.api.person.PersonId;
import wickbench.drill.DrillResult;

/**
 * A drill that was kept; practice, which authorises nobody.
 *
 * @param strips how many were shown
 * @param threshold the faintest contrast seen half of the time, a part of the luminance, between {@code lower} and {@code upper}
 * @param alarms how many of the {@code blanks} were called with a line
 * @param missed how many of the {@code plain} lines were called without
 */
public record Drilled(
        EntryRef entry,
        PersonId person,
        Instant at,
        int strips,
        double threshold,
        double lower,
        double upper,
        int blanks,
        int alarms,
        int plain,
        int missed,
        Set<DrillResult.Caution> cautions) {
    public Drilled {
        cautions = Set.copyOf(cautions);
    }
}

package wickbench.training;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

/**
 * How a person stood to a method at an instant.
 *
 * @param until the last day of the term
 * @param untestedUntil the last day on which they may still test without having tested in between
 * @param lapse why it lapsed, where it did
 * @param tested the last day on which they read a strip by this method
 * @param read the newest version that they have read and understood, 0 when none is known
 * @param version the version in force, empty where no issued method is known by this id
 * @param why the reason of the last decision, in the words of who decided
 * @param decided the entry of that decision
 * @param suspensions the entries that suspend them and that nothing has answered
 * @param clashes moves that the table does not allow after what went before, in words of the table
 */
public record Competence(
        PersonId person,
        MethodId method,
        CompetenceState state,
        Optional<LocalDate> until,
        Optional<LocalDate> untestedUntil,
        Optional<Lapse> lapse,
        Optional<LocalDate> tested,
        int read,
        Optional<Integer> version,
        Optional<String> why,
        Optional<UUID> decided,
        List<UUID> suspensions,
        List<Clash> clashes) {
    public Competence {
        suspensions = List.copyOf(suspensions);
        clashes = List.copyOf(clashes);
    }

    /**
     * A move that came where the table does not allow it; the entry is kept.
     *
     * @param entry its id
     */
    public record Clash(UUID entry, CompetenceMove move, CompetenceState state) {}

    /** Returns the last day on which it still holds if nothing is done; empty where it does not hold or has no end. */
    public Optional<LocalDate> holdsUntil() {
        if (state != CompetenceState.AUTHORISED && state != CompetenceState.UNREAD) {
            return Optional.empty();
        }
        return untestedUntil
                .filter(day -> until.filter(term -> term.isBefore(day)).isEmpty())
                .or(() -> until);
    }

    /** Tells whether it ends within so many days. */
    public boolean dueSoon(LocalDate today, int days) {
        return holdsUntil()
                .filter(day -> ChronoUnit.DAYS.between(today, day) < days)
                .isPresent();
    }
}

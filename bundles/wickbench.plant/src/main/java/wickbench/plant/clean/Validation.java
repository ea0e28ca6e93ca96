package wickbench.plant.clean;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.api.words.Coded;

/**
 * How a clean stands.
 *
 * @param passes in a row, in the series under way
 * @param series the newest that was opened
 * @param until the last day on which it counts as shown; empty before it was confirmed
 * @param allergens for which it was shown
 * @param runs of the series under way, oldest first: whether each passed
 * @param why what ended it last: the reason of a change, or empty
 */
public record Validation(
        Clean clean,
        Validity state,
        int passes,
        Optional<Series> series,
        Optional<LocalDate> until,
        Set<String> allergens,
        List<Ran> runs,
        Optional<String> why) {
    public Validation {
        allergens = Set.copyOf(allergens);
        runs = List.copyOf(runs);
    }

    /** A clean of the series, and why it failed if it did. */
    public record Ran(SeriesRun run, List<Lack> lacks) {
        public Ran {
            lacks = List.copyOf(lacks);
        }

        public boolean passed() {
            return lacks.isEmpty();
        }
    }

    /** What a clean of a series lacks. */
    public record Lack(Why why, String place) {}

    /** Why a clean of a series does not pass. */
    public enum Why implements Coded {
        /** Seen soiled: nothing was sampled, and nothing had to be. */
        SOILED,
        NOT_TESTED,
        NOT_NEGATIVE,
        /** A Negative that something put in doubt, and on which nobody has decided. */
        IN_DOUBT
    }

    /** Tells whether enough cleans in a row have passed for quality to confirm it. */
    public boolean ready() {
        return passes >= Series.PASSES && state.after(Validity.Move.CONFIRM).isPresent();
    }

    /** Tells whether it was shown for all of these allergens and still counts. */
    public boolean covers(Set<String> asked) {
        return state.usable() && allergens.containsAll(asked);
    }
}

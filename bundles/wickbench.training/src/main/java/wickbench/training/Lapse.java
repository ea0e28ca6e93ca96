package wickbench.training;

import java.time.LocalDate;
import wickbench.api.words.Coded;

/**
 * Why a competence lapsed.
 *
 * @param day the first day on which it no longer held
 */
public record Lapse(Cause cause, LocalDate day) {

    /** What the calendar found. */
    public enum Cause implements Coded {
        /** The term is over. */
        TERM,
        /** No strip was tested for as many weeks as the terms allow. */
        UNTESTED
    }
}

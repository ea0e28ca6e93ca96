package wickbench.training;

import java.util.Optional;
import wickbench.api.method.Format;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;

/** What a strip of a blind round was made to be. */
public enum StripClass implements Coded {
    /** Without allergen. */
    BLANK,
    /** So little allergen that the line is faint or not there; its key is the line, never the dose. */
    NEAR_LIMIT,
    /** A clear positive. */
    CLEAR,
    /** So much allergen that the hook line is lost. */
    HOOK,
    /** Spoilt: without control line, or damaged. */
    INVALID;

    /** Returns what is right to call; of a near-limit strip it follows from the line that is there. */
    public Optional<Outcome> expected() {
        return switch (this) {
            case BLANK -> Optional.of(Outcome.NEGATIVE);
            case CLEAR -> Optional.of(Outcome.POSITIVE);
            case HOOK -> Optional.of(Outcome.POSITIVE_ABOVE_RANGE);
            case INVALID -> Optional.of(Outcome.INVALID);
            case NEAR_LIMIT -> Optional.empty();
        };
    }

    /** Returns what is right to call of a near-limit strip. */
    public static Outcome ofLine(Format format, boolean testLine) {
        return testLine == format.sandwich() ? Outcome.POSITIVE : Outcome.NEGATIVE;
    }
}

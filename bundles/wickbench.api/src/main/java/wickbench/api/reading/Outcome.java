package wickbench.api.reading;

import wickbench.api.words.Coded;

/** What a strip says. A negative is never "free of". */
public enum Outcome implements Coded {
    NEGATIVE,
    POSITIVE,
    POSITIVE_ABOVE_RANGE,
    INVALID;

    /** Tells whether allergen was detected. */
    public boolean positive() {
        return this == POSITIVE || this == POSITIVE_ABOVE_RANGE;
    }
}

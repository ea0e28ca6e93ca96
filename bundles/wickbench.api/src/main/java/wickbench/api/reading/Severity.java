package wickbench.api.reading;

import wickbench.api.words.Coded;

/** What a finding does to an outcome. */
public enum Severity implements Coded {
    /** Makes any outcome Invalid. */
    VOIDS,
    /** Makes a Negative Invalid; a Positive stands. */
    BARS_NEGATIVE,
    /** Informs. */
    CAUTION
}

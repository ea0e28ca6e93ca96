package wickbench.api.reading;

import wickbench.api.words.Coded;

/** A strip run to check the run itself. */
public enum RunControl implements Coded {
    /** Must be negative. */
    BLANK,
    /** Must be positive: a sample with a known small amount. */
    LOW_POSITIVE
}

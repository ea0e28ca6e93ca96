package wickbench.api.method;

import wickbench.api.words.Coded;

/** What a reader saw of one line. */
public enum Seen implements Coded {
    SEEN,
    /** Seen, and noted as faint: any intensity is seen. */
    FAINT,
    NOT_SEEN,
    /** Smeared, partial or displaced. */
    DAMAGED;

    /** Tells whether the line is there, strong or faint. */
    public boolean there() {
        return this == SEEN || this == FAINT;
    }
}

package wickbench.bench.run;

import wickbench.api.words.Coded;

/** Where a strip stands. */
public enum Phase implements Coded {
    WAITING,
    DEVELOPING,
    /** Its window is open: read now. */
    OPEN,
    /** Its window has passed and nobody has answered a line. */
    MISSED,
    /** A line has been answered in time of reading; the rest is still open. */
    LOOKING,
    /** Its lines are kept, and a second reader is asked for. */
    SECOND,
    /** Its lines are kept; it goes into the journal once the run's control is known. */
    KEPT,
    RECORDED,
    SKIPPED;

    /** Tells whether nothing more happens to it. */
    public boolean over() {
        return this == RECORDED || this == SKIPPED;
    }
}

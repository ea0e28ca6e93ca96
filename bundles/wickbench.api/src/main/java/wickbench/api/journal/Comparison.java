package wickbench.api.journal;

import wickbench.api.words.Coded;

/**
 * What came of holding a checkpoint kept elsewhere against a journal.
 *
 * @param result in one word
 * @param signed whether the checkpoint carried the station's own signature; what was typed by hand carries none
 * @param text the same for people, with sizes and what to do about it
 */
public record Comparison(Result result, boolean signed, String text) {

    /** Tells whether the journal holds all that the checkpoint covers, unchanged. */
    public boolean holds() {
        return result == Result.CONSISTENT;
    }

    /** The ways in which a checkpoint and a journal may stand to one another. */
    public enum Result implements Coded {
        /** The journal holds all that the checkpoint covers, unchanged. */
        CONSISTENT,
        /** The journal holds fewer entries than the checkpoint covers: it was put back, or cut. */
        OLDER,
        /** The journal holds other entries than the checkpoint covers: one of the two was forked or rewritten. */
        FORKED,
        /** Another key signed the checkpoint, or it was altered. */
        KEY_DIFFERS,
        /** No journal of that station is here. */
        UNKNOWN_STATION,
        /** It is no checkpoint. */
        UNREADABLE
    }
}

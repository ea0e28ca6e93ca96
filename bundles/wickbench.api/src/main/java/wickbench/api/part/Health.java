package wickbench.api.part;

import wickbench.api.words.Coded;

/**
 * One thing that was looked at.
 *
 * @param of what
 * @param state how it is
 * @param text in one or two plain sentences, in the user's language
 */
public record Health(Of of, State state, String text) {

    /** What is looked at. */
    public enum Of implements Coded {
        BUNDLES,
        SERVICES,
        SETS,
        DISK,
        CLOCK,
        KEY,
        JOURNAL,
        INDEX
    }

    /** How a thing is. */
    public enum State implements Coded {
        /** As it should be. */
        WELL,
        /** To be known; nothing is lost. */
        MINDED,
        /** Something does not work. */
        UNWELL
    }
}

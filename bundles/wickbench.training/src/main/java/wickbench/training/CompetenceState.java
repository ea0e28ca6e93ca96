package wickbench.training;

import wickbench.api.words.Coded;

/** How a person stands to a method. The later constant is the more cautious. */
public enum CompetenceState implements Coded {
    AUTHORISED,
    /** Authorised, but a newer version of the method is not yet read and understood. */
    UNREAD,
    /** The term is over, or nothing was tested for too long. */
    LAPSED,
    /** Never authorised. */
    NEVER,
    SUSPENDED;

    /** Tells whether this person may test by themself. */
    public boolean mayTest() {
        return this == AUTHORISED;
    }
}

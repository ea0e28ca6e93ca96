package wickbench.stock;

import wickbench.api.words.Coded;

/** How a lot stands. Being out of date is no state: it follows from the day. The later constant is the more cautious. */
public enum LotState implements Coded {
    FIT,
    USED_UP,
    AWAITING_CHECK,
    QUARANTINED,
    /** In quarantine, and its newest delivery was not checked either. */
    QUARANTINED_UNCHECKED,
    REJECTED,
    DESTROYED;

    public boolean quarantined() {
        return this == QUARANTINED || this == QUARANTINED_UNCHECKED;
    }

    /** Tells whether its strips could still be used or become usable. */
    public boolean kept() {
        return this == FIT || this == AWAITING_CHECK || quarantined();
    }
}

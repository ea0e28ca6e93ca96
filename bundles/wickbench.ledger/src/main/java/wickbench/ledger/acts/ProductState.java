package wickbench.ledger.acts;

import wickbench.api.words.Coded;

/** How product stands that a result is about. */
public enum ProductState implements Coded {
    /** The result holds nothing. */
    FREE,
    /** Nobody uses or ships it until an authorised person decides. */
    HELD,
    IN_REWORK,
    /** Worked again; held until it is decided on once more. */
    REWORKED,
    IN_RELABELLING,
    /** Its label declares the allergen. */
    RELABELLED,
    IN_DESTRUCTION,
    DESTROYED,
    RELEASED;

    /** Tells whether nothing is left to decide. */
    public boolean ended() {
        return this == RELABELLED || this == DESTROYED || this == RELEASED;
    }

    /** Tells whether something was decided that is still to be done. */
    public boolean underWay() {
        return this == IN_REWORK || this == IN_RELABELLING || this == IN_DESTRUCTION;
    }

    /** Tells whether it may go, as far as this result is concerned. */
    public boolean mayGo() {
        return this == FREE || this == RELEASED || this == RELABELLED;
    }
}

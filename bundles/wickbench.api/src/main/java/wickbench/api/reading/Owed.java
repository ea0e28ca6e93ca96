package wickbench.api.reading;

import wickbench.api.words.Coded;

/** What has to be done next because of a reading; proposed here, decided by an authorised person. */
public enum Owed implements Coded {
    /** Repeat the strip, once from the same extract, then from a new sample. */
    REPEAT,
    /** Repeat at ×10 and ×100 before a Negative stands. */
    REPEAT_DILUTED,
    /** Dilute and repeat to bracket an amount above the strip's range. */
    BRACKET,
    /** Hold line and product until decided. */
    HOLD,
    /** Clean again. */
    RE_CLEAN,
    /** Take new samples at the same point and its neighbours. */
    RE_TEST,
    /** Decide whether a Negative stands that was put in doubt later; never proposed by a verdict. */
    DECIDE,
    /** Run a control that the site asks for; never proposed by a verdict. */
    RUN_CONTROL
}

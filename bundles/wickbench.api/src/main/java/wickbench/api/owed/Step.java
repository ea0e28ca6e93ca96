package wickbench.api.owed;

import wickbench.api.reading.Owed;
import wickbench.api.words.Coded;

/** What is to be done next because of something owed. */
public enum Step implements Coded {
    /** A new strip from the same extract, once. */
    REPEAT_SAME_EXTRACT(Owed.REPEAT),
    /** A new sample: two strips of one extract were invalid. */
    REPEAT_NEW_SAMPLE(Owed.REPEAT),
    /** No further strip: quality finds out why strips stay invalid. */
    STOP_AND_CALL_QUALITY(Owed.REPEAT),
    /** The run control once more. */
    REPEAT_CONTROL(Owed.REPEAT),
    /** A run control that the site's rule asks for and that nobody ran. */
    RUN_CONTROL(Owed.RUN_CONTROL),
    /** A new strip because the low positive control after it failed. */
    REPEAT_AFTER_CONTROL(Owed.REPEAT),
    /** ×10 and ×100 before a Negative stands. */
    REPEAT_DILUTED(Owed.REPEAT_DILUTED),
    /** Dilutions until one is no longer above the range. */
    BRACKET(Owed.BRACKET),
    /** Line and product are held until an authorised person decides. */
    HOLD(Owed.HOLD),
    /** Clean the place again. */
    RE_CLEAN(Owed.RE_CLEAN),
    /** New samples at the same point and its neighbours, after the clean. */
    RE_TEST(Owed.RE_TEST),
    /** An authorised person decides whether a Negative in doubt stands. */
    DECIDE(Owed.DECIDE);

    private final Owed owed;

    Step(Owed owed) {
        this.owed = owed;
    }

    /** Returns what of a verdict this is a step of. */
    public Owed owed() {
        return owed;
    }
}

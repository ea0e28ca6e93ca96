package wickbench.bench.ui;

import java.util.Optional;
import wickbench.api.words.Coded;

/** What is heard at the bench. */
interface Bell {

    /** What a sound is for. */
    enum Sound implements Coded {
        OPENS,
        CLOSES_SOON,
        MISSED,
        /** A step of the method has lasted as long as it should. */
        STEP,
        /** To hear whether anything is heard. */
        TRIAL
    }

    /** Why nothing will be heard. */
    enum Trouble implements Coded {
        NO_DEVICE,
        MUTED
    }

    /** Makes a sound, soon; never waits and never fails, for the screen says the same. */
    void ring(Sound sound);

    /** Looks whether anything will be heard; not on the UI thread. */
    Optional<Trouble> trouble();
}

package wickbench.console;

import wickbench.api.check.Refusal;

/** How an attempt to run a call ended. */
sealed interface Ending {

    /** It ran, and said what there was to say. */
    record Done(int code) implements Ending {}

    /** Nothing was done, because another program holds the home. */
    record Held(Refusal refusal) implements Ending {}
}

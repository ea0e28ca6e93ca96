package wickbench.parts.health;

import wickbench.api.check.Refusal;
import wickbench.api.home.Home;
import wickbench.api.journal.Journal;

/** Leaves a question about the running program to the program that holds the home: another one runs other sets, and is soon gone. */
public final class Holder {
    private static final String HELD = "home.held";

    private Holder() {}

    /**
     * Takes the home where there is one, or finds it held.
     *
     * @throws Refusal {@code home.held}, upon which the command line asks the holder; what else is wrong with the journal is no reason
     *     not to answer
     */
    public static void answers(Home home, Journal journal) {
        if (!home.isBegun()) {
            return;
        }
        try {
            journal.stations();
        } catch (Refusal refused) {
            if (refused.code().equals(HELD)) {
                throw refused;
            }
        }
    }
}

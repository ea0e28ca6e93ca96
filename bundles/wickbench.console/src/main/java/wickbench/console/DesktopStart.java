package wickbench.console;

import java.util.Optional;
import wickbench.api.check.Refusal;
import wickbench.api.command.Desktop;
import wickbench.api.person.PersonId;
import wickbench.console.door.Knock;

/**
 * Opens the desktop, or lets the one that is open come forward.
 *
 * <p>Of two that are started at once one gets the home. The other finds it held while there is no window yet to come forward, or
 * the holder just ending; so it asks again for a while.
 */
final class DesktopStart {
    private static final int ATTEMPTS = 60;
    private static final long PAUSE_MILLIS = 150;

    private final Desktop desktop;
    private final Knock knock;

    DesktopStart(Desktop desktop, Knock knock) {
        this.desktop = desktop;
        this.knock = knock;
    }

    /**
     * Returns the exit code.
     *
     * @throws Refusal when a program without a window holds the home, and goes on holding it
     */
    int run(Optional<PersonId> actor) {
        for (int attempt = 1; !knock.comeForward(); attempt++) {
            try {
                return desktop.open(Optional.empty(), actor);
            } catch (Refusal held) {
                if (attempt == ATTEMPTS || !Pause.of(PAUSE_MILLIS)) {
                    throw held;
                }
            }
        }
        return 0;
    }
}

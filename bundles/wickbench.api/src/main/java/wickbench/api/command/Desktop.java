package wickbench.api.command;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.person.PersonId;

/** The desktop, where it is installed; opened when the command line names no command. */
@ProviderType
public interface Desktop {

    /**
     * Takes the home, opens the window and returns when it is closed; must be called on the program's main thread.
     *
     * @param page the page to show first
     * @param actor who has the desk at first: their id goes under facts, and opens nothing that asks for more
     * @return the exit code
     * @throws wickbench.api.check.Refusal {@code home.held} when another program holds the home; no window was shown then
     */
    int open(Optional<String> page, Optional<PersonId> actor);

    /** Brings the open window to the front, from any thread; tells whether there is one. */
    boolean comeForward();
}

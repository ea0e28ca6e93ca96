package wickbench.api.command;

import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/** The desktop, where it is installed; opened when the command line names no command. */
@ProviderType
public interface Desktop {

    /**
     * Opens the window and returns when it is closed; must be called on the program's main thread.
     *
     * @param page the page to show first
     * @return the exit code
     */
    int open(Optional<String> page);

    /** Brings the open window to the front, from any thread; tells whether there is one. */
    boolean comeForward();
}

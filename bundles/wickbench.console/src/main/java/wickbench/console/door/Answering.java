package wickbench.console.door;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;

/** What the holder of a home does for other programs. */
public interface Answering {

    /**
     * Runs a command as if it had been called here; several may run at once.
     *
     * @param folder where relative paths start
     * @return the exit code
     */
    int command(List<String> arguments, Path folder, PrintStream out, PrintStream err, Asking asking);

    /** Brings the window to the front; tells whether there is one. */
    boolean comeForward();
}

package wickbench.widgets;

import java.util.function.Consumer;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Work behind the screen for one page.
 *
 * <p>Nothing slow runs on the UI thread: it is given here, done elsewhere, and its result comes back on the UI thread if the
 * page still lives then. A page that is closed cancels its jobs.
 */
@ProviderType
public interface Jobs {

    /**
     * Starts work.
     *
     * @param what what is being done, for the status line
     * @param done takes the result, on the UI thread
     * @param failed takes what went wrong, on the UI thread
     */
    <T> Job run(String what, Work<T> work, Consumer<? super T> done, Consumer<Exception> failed);

    /** Starts work whose failure is shown in place of the page. */
    <T> Job run(String what, Work<T> work, Consumer<? super T> done);
}

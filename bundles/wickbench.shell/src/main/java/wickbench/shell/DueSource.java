package wickbench.shell;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Someone who knows what is due at this desk, such as a lot near its date; contributed as a service.
 *
 * <p>Asked every minute, off the UI thread.
 */
@ConsumerType
@FunctionalInterface
public interface DueSource {

    /** Returns what is due now, most urgent first; a few at most. */
    List<Due> due();
}

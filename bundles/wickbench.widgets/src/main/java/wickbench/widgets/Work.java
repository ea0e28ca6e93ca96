package wickbench.widgets;

import org.osgi.annotation.versioning.ConsumerType;
import wickbench.api.progress.Progress;

/**
 * Something slow, done off the UI thread.
 *
 * @param <T> what comes of it
 */
@ConsumerType
@FunctionalInterface
public interface Work<T> {

    /**
     * Does it.
     *
     * @param progress hears how far it is; its answer false means that the person pressed Cancel
     * @throws Exception what went wrong; told to the person in the exception's own words
     */
    T run(Progress progress) throws Exception;
}

package wickbench.shell;

import java.util.List;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Someone who knows what a new desk needs, contributed as a service by the bundle that owns it.
 *
 * <p>Asked off the UI thread whenever the page of first steps is looked at, and each minute until all are done, also where nothing
 * was ever recorded.
 */
@ConsumerType
@FunctionalInterface
public interface FirstSteps {

    /** Returns the steps, done ones included. */
    List<FirstStep> steps();
}

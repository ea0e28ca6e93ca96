package wickbench.widgets;

import org.osgi.annotation.versioning.ProviderType;

/** A piece of work behind the screen. */
@ProviderType
public interface Job {

    /** Stops it at its next safe point; its result will not be delivered. */
    void cancel();

    /** Tells whether it neither ended nor was cancelled. */
    boolean running();
}

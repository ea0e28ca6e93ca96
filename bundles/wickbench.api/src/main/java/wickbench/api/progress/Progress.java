package wickbench.api.progress;

import org.osgi.annotation.versioning.ConsumerType;

/** Someone who watches long work. */
@ConsumerType
@FunctionalInterface
public interface Progress {

    /** Watches nothing and never stops the work. */
    Progress NONE = (done, total) -> true;

    /**
     * Hears how far the work is.
     *
     * @param done units done
     * @param total units in all; at least {@code done}
     * @return false to stop the work at the next safe point
     */
    boolean at(long done, long total);
}

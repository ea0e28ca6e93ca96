package wickbench.api.gate;

import java.time.Instant;
import java.util.Optional;
import org.osgi.annotation.versioning.ConsumerType;

/** Knows what places are made of; reads the index, so never asked on the screen's thread. */
@ConsumerType
@FunctionalInterface
public interface Surfaces {

    /**
     * Returns the kind of surface of a sampling point as it was stated at an instant, such as {@code stainless steel}.
     *
     * <p>Empty when the place is not stated, or when what is sampled there is no surface.
     */
    Optional<String> of(String place, Instant at);
}

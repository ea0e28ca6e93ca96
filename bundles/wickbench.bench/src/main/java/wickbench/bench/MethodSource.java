package wickbench.bench;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.method.MethodId;

/** Where methods come from: what this site has issued, or files. */
@FunctionalInterface
interface MethodSource {

    /**
     * Returns the method that holds for a strip.
     *
     * @param start when the strip was started; empty when that is not known
     */
    Optional<Method> find(MethodId id, Optional<Instant> start);
}

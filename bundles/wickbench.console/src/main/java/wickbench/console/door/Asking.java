package wickbench.console.door;

import java.util.Optional;

/** Asks the person who called for something that is not shown. */
@FunctionalInterface
public interface Asking {

    /** Returns the answer, the receiver's own copy; empty when there is nobody to ask. */
    Optional<char[]> secret(String prompt);
}

package wickbench.api.index;

import java.util.Optional;

/**
 * How far a view is.
 *
 * @param taken entries taken in
 * @param of entries there are
 * @param failure why it stopped, in one line; empty when it did not
 */
public record ViewState(String name, int version, long taken, long of, Optional<String> failure) {}

package wickbench.api.owed;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Visual;

/**
 * The body of {@code visual.checked}: what the eye said of a place, with or without a test after it.
 *
 * <p>A place seen soiled owes a re-clean.
 */
public record VisualCheck(String place, Optional<String> line, Visual result, PersonId by, Instant at) {
    public static final String KIND = "visual.checked";
    public static final int VERSION = 1;
}

package wickbench.training;

import java.time.Instant;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;

/**
 * A test of somebody's colour vision.
 *
 * @param how by which test, under which light, in the site's words
 */
public record Sight(PersonId person, Instant at, Vision vision, String how) {

    /** What it found. */
    public enum Vision implements Coded {
        NORMAL,
        /** Colour-deficient, and shown to see the lines under the site's own light. */
        DEFICIENT_QUALIFIED,
        DEFICIENT
    }
}

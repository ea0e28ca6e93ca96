package wickbench.api.owed;

import java.time.Instant;
import java.util.Optional;
import wickbench.api.person.PersonId;

/**
 * The body of {@code clean.recorded}: a place was cleaned.
 *
 * @param place sampling point or area, by the site's name; a line as a whole when it is the line's name
 * @param line production line
 * @param procedure which, by the site's name
 * @param by who cleaned
 * @param ended when the clean ended
 */
public record CleanDone(String place, Optional<String> line, String procedure, PersonId by, Instant ended) {
    public static final String KIND = "clean.recorded";
    public static final int VERSION = 1;
}

package wickbench.api.owed;

import java.util.List;
import java.util.UUID;

/**
 * The body of {@code retest.planned}: which points beside its own a Positive asks to be sampled again.
 *
 * @param reading the reading that owes the re-test
 * @param points the neighbours, by the site's names; none when the point has none
 */
public record Neighbourhood(UUID reading, List<String> points) {
    public static final String KIND = "retest.planned";
    public static final int VERSION = 1;

    public Neighbourhood {
        points = List.copyOf(points);
    }
}

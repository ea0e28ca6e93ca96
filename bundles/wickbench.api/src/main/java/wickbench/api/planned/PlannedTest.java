package wickbench.api.planned;

import java.util.Optional;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Reason;

/**
 * A sample that is to be taken.
 *
 * @param code a label for the tube that no other sample of this occasion has
 * @param place sampling point, by the site's name
 * @param reasonText what made it due, in the site's words
 */
public record PlannedTest(
        String code,
        String place,
        Optional<String> line,
        MethodId method,
        Reason reason,
        Optional<String> reasonText) {}

package wickbench.plant;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.method.MethodId;
import wickbench.api.reading.Outcome;
import wickbench.plant.site.Point;
import wickbench.plant.site.Spot;

/**
 * A point by its latest outcome.
 *
 * @param spot where it lies on the picture; empty before it was placed
 * @param latest of the newest result by each method, the gravest; empty when it was never tested
 */
public record PointLook(Point point, Optional<Spot> spot, Optional<Latest> latest) {

    /**
     * A result as it stands.
     *
     * @param doubted a Negative that something put in doubt and on which nobody has decided, as it is known now
     */
    public record Latest(UUID result, MethodId method, Outcome outcome, Instant started, boolean doubted) {}
}

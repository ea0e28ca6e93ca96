package wickbench.plant;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;
import wickbench.api.method.MethodId;
import wickbench.plant.changeover.Changing;
import wickbench.plant.programme.DueItem;

/** Answers for the plant; reads the index, so never on the screen's thread. */
@ProviderType
public interface PlantBook {

    /** Returns the plant as it was stated at an instant. */
    PlantState at(Instant at);

    /**
     * Returns what works out the changes of a line.
     *
     * @throws wickbench.api.check.BadInput when there is no such line
     */
    Changing changing(String line, Instant at);

    /** Returns everything that rules made due up to an instant, done or not, the oldest first. */
    List<DueItem> due(Instant at);

    /** Returns every point by its latest outcome as of an instant; those never tested too. */
    List<PointLook> looks(Instant at);

    /** Returns the methods that are in force at an instant, by which points can be sampled. */
    List<MethodId> methods(Instant at);

    Instant now();

    ZoneId zone();
}

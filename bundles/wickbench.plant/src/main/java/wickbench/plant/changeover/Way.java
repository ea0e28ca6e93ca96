package wickbench.plant.changeover;

import java.util.List;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;

/**
 * An issued method whose target is an allergen that leaves.
 *
 * @param sees whether it sees the part of it that is there
 * @param notSeen what of the allergen it does not see, by its own statement
 */
public record Way(MethodRef method, Route route, String target, boolean sees, List<String> notSeen) {
    public Way {
        notSeen = List.copyOf(notSeen);
    }
}

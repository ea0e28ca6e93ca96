package wickbench.plant.changeover;

import java.util.Set;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Route;
import wickbench.plant.site.Sampling;

/**
 * One strip that a change asks for.
 *
 * @param allergens that it looks for
 * @param drawn whether its point belongs to the pool from which points are drawn at random
 */
public record Probe(String place, MethodRef method, Route route, Set<String> allergens, boolean drawn) {
    public Probe {
        allergens = Set.copyOf(allergens);
    }

    public Sampling sampling() {
        return new Sampling(place, method.id());
    }
}

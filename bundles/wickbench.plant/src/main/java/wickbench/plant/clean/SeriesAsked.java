package wickbench.plant.clean;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wickbench.plant.site.Sampling;

/**
 * A series as it is asked for, before the worst case is chosen.
 *
 * @param product empty for the hardest to clean away by what is stated
 * @param reasons why another was chosen; none for what is stated
 * @param allergens for which the clean will be valid; none for those of the product
 */
public record SeriesAsked(
        String clean, Optional<String> product, List<String> reasons, Set<String> allergens, List<Sampling> points) {
    public SeriesAsked {
        reasons = List.copyOf(reasons);
        allergens = Set.copyOf(allergens);
        points = List.copyOf(points);
    }
}

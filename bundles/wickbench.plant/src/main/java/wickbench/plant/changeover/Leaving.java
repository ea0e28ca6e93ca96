package wickbench.plant.changeover;

import java.util.List;
import wickbench.plant.product.Contained;

/**
 * An allergen of the product made that the next one does not hold.
 *
 * @param ways every issued method for it, those that do not see it too
 * @param tested whether some point is sampled by one that sees it
 */
public record Leaving(Contained held, List<Way> ways, boolean tested) {
    public Leaving {
        ways = List.copyOf(ways);
    }

    /** Tells whether some issued method sees it. */
    public boolean covered() {
        return ways.stream().anyMatch(Way::sees);
    }
}

package wickbench.stock;

import java.math.BigDecimal;
import java.util.Set;
import wickbench.api.method.Route;

/**
 * Something in a kit that a test consumes, by the site's own name.
 *
 * @param strip whether it is the strip; exactly one part of a kit is
 * @param perPouch how much of it lies in a pouch
 * @param perBox how much of it lies in a box beside the pouches
 * @param perTest how much of it a test takes
 * @param unit such as {@code piece} or {@code mL}
 * @param routes for which samples it is taken; empty means for all
 */
public record Part(
        String name,
        boolean strip,
        BigDecimal perPouch,
        BigDecimal perBox,
        BigDecimal perTest,
        String unit,
        Set<Route> routes) {
    public Part {
        routes = Set.copyOf(routes);
    }

    /** Returns how much of it a whole box holds. */
    public BigDecimal inBox(int pouches) {
        return perPouch.multiply(BigDecimal.valueOf(pouches)).add(perBox);
    }

    /** Tells whether a test of this route takes some of it. */
    public boolean taken(Route route) {
        return routes.isEmpty() || routes.contains(route);
    }
}

package wickbench.plant.changeover;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.product.Contained;
import wickbench.plant.product.Product;

/** The changes between a day's products as the search for the best order wants them: what must not be made has no time. */
public final class DayTable {
    private final Changing changing;
    private final Map<Alike, Optional<BigDecimal>> known = new HashMap<>();

    private DayTable(Changing changing) {
        this.changing = changing;
    }

    /** Changes ask for the same where products hold the same, and nobody disputes it. */
    private record Alike(Optional<List<Contained>> from, Optional<List<Contained>> to, boolean disputed) {}

    public static ChangeTable of(List<Product> products, Changing changing) {
        DayTable table = new DayTable(changing);
        List<List<Optional<BigDecimal>>> minutes = new ArrayList<>();
        for (Product from : products) {
            minutes.add(products.stream().map(to -> table.cost(from, to)).toList());
        }
        return new ChangeTable(products.stream().map(Product::id).toList(), minutes);
    }

    private Optional<BigDecimal> cost(Product from, Product to) {
        return known.computeIfAbsent(
                new Alike(from.holds(), to.holds(), changing.disputed(from) || changing.disputed(to)),
                alike -> changing.of(from, to).cost());
    }
}

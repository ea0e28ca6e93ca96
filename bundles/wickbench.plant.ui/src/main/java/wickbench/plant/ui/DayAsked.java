package wickbench.plant.ui;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wickbench.api.words.Decimals;
import wickbench.plant.PlantBook;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.Changing;
import wickbench.plant.changeover.DayTable;
import wickbench.plant.day.DayProducts;
import wickbench.plant.day.Demands;
import wickbench.plant.order.DayOrder;
import wickbench.plant.order.DayOrder.Found;
import wickbench.plant.order.DayPlanner;
import wickbench.plant.product.Product;
import wickbench.plant.terms.PlantTerms;

/**
 * A day's products with the order that was found for them.
 *
 * @param products in the order in which they were entered
 */
record DayAsked(List<Product> products, Changing changing, DayOrder answer) {

    /** Plans a day; not on the UI thread. */
    static DayAsked plan(PlantBook book, String line, String typed, Demands.Typed demands) {
        Instant now = book.now();
        List<Product> products = DayProducts.of(PlantUiWords.get("tab.order"), book.at(now), line, typed);
        Changing changing = book.changing(line, now);
        Demands asked = new Demands(DayTable.of(products, changing), false, DemandFields.names());
        return new DayAsked(products, changing, DayPlanner.plan(asked.of(demands)));
    }

    List<Integer> entered() {
        return IntStream.range(0, products.size()).boxed().toList();
    }

    /** Returns the order that takes least; empty when none may be made. */
    Optional<List<Integer>> best() {
        return answer instanceof Found found ? Optional.of(found.order()) : Optional.empty();
    }

    /** Returns the changes of an order, one less than its products. */
    List<Changeover> changes(List<Integer> order) {
        return IntStream.range(1, order.size())
                .mapToObj(place -> changing.of(products.get(order.get(place - 1)), products.get(order.get(place))))
                .toList();
    }

    /** Returns what was found, in a sentence or two. */
    String says() {
        if (answer instanceof Found found) {
            String total = found.optimal()
                    ? PlantTerms.said("order.optimal", Decimals.of(found.total()))
                    : PlantTerms.said("order.within", Decimals.of(found.total()), Decimals.of(found.bound()));
            String saved = found.saving()
                    .map(Decimals::of)
                    .map(minutes -> PlantTerms.said("order.saving", minutes))
                    .orElseGet(() -> PlantTerms.said("order.entered-not"));
            return total + " " + saved;
        }
        return PlantTerms.said(
                answer instanceof DayOrder.Impossible ? "order.impossible" : "order.none-found", DayPlanner.PROVEN);
    }
}

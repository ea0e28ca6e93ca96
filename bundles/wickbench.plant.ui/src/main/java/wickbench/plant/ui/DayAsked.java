package wickbench.plant.ui;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.plant.PlantBook;
import wickbench.plant.PlantState;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.Changing;
import wickbench.plant.changeover.DayTable;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.order.DayOrder;
import wickbench.plant.order.DayOrder.Found;
import wickbench.plant.order.DayPlanner;
import wickbench.plant.order.DayRequest;
import wickbench.plant.product.Product;
import wickbench.plant.terms.PlantTerms;

/**
 * A day's products with the order that was found for them.
 *
 * @param products in the order in which they were entered
 */
record DayAsked(List<Product> products, Changing changing, DayOrder answer) {

    /** Plans a day; not on the UI thread. */
    static DayAsked plan(PlantBook book, String line, String typed) {
        Instant now = book.now();
        PlantState plant = book.at(now);
        List<String> ids = Arrays.stream(typed.split(","))
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .toList();
        if (ids.isEmpty()) {
            throw wrong("order.none");
        }
        if (ids.size() > ChangeTable.MOST) {
            throw new BadInput(Complaint.of(line, PlantTerms.said("matrix.many", ChangeTable.MOST, ids.size())));
        }
        if (ids.stream().distinct().count() < ids.size()) {
            throw new BadInput(Complaint.of(line, PlantTerms.said("order.repeated")));
        }
        List<Product> products = ids.stream()
                .map(id -> plant.product(id)
                        .filter(product -> product.lines().contains(line))
                        .orElseThrow(
                                () -> new BadInput(Complaint.of(line, PlantTerms.said("product.not-on", id, line)))))
                .toList();
        Changing changing = book.changing(line, now);
        return new DayAsked(products, changing, DayPlanner.plan(DayRequest.of(DayTable.of(products, changing), false)));
    }

    private static BadInput wrong(String key) {
        return new BadInput(Complaint.of(PlantUiWords.get("tab.order"), PlantUiWords.get(key)));
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
                    ? PlantTerms.said("order.optimal", found.total().toPlainString())
                    : PlantTerms.said(
                            "order.within",
                            found.total().toPlainString(),
                            found.bound().toPlainString());
            String saved = found.saving()
                    .map(BigDecimal::toPlainString)
                    .map(minutes -> PlantTerms.said("order.saving", minutes))
                    .orElseGet(() -> PlantTerms.said("order.entered-not"));
            return total + " " + saved;
        }
        return PlantTerms.said(
                answer instanceof DayOrder.Impossible ? "order.impossible" : "order.none-found", DayPlanner.PROVEN);
    }
}

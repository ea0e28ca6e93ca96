package wickbench.plant.day;

import java.util.Arrays;
import java.util.List;
import wickbench.api.check.BadInput;
import wickbench.api.check.Complaint;
import wickbench.plant.PlantState;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.product.Product;
import wickbench.plant.terms.PlantTerms;

/** Reads the products of a day, by their ids and parted by commas. */
public final class DayProducts {
    private DayProducts() {}

    /**
     * Returns them in the order in which they were typed.
     *
     * @param field what is named when they cannot be
     * @throws BadInput when there is none, or more than can be ordered, or one twice or not made on the line
     */
    public static List<Product> of(String field, PlantState plant, String line, String typed) {
        List<String> ids = Arrays.stream(typed.split(","))
                .map(String::strip)
                .filter(id -> !id.isEmpty())
                .toList();
        if (ids.isEmpty()) {
            throw bad(field, "order.none");
        }
        if (ids.size() > ChangeTable.MOST) {
            throw bad(field, "matrix.many", ChangeTable.MOST, ids.size());
        }
        if (ids.stream().distinct().count() < ids.size()) {
            throw bad(field, "order.repeated");
        }
        return ids.stream().map(id -> product(field, plant, line, id)).toList();
    }

    private static Product product(String field, PlantState plant, String line, String id) {
        Product product = plant.product(id).orElseThrow(() -> bad(field, "product.unknown", id));
        if (!product.lines().contains(line)) {
            throw bad(field, "product.not-on", id, line);
        }
        return product;
    }

    private static BadInput bad(String field, String key, Object... values) {
        return new BadInput(Complaint.of(field, PlantTerms.said(key, values)));
    }
}

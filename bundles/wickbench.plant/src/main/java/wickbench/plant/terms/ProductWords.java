package wickbench.plant.terms;

import java.util.stream.Collectors;
import wickbench.plant.product.Product;
import wickbench.plant.product.WorstCase;

/** Says in words what a product holds, and why it is the worst to clean away. */
public final class ProductWords {
    private ProductWords() {}

    /** Returns its allergens with their forms; that it holds none, or that nobody has said, are two answers. */
    public static String holds(Product product) {
        if (!product.stated()) {
            return PlantWords.get("holds.not-stated");
        }
        return product.holds().orElseThrow().isEmpty()
                ? PlantWords.get("holds.none")
                : product.holds().orElseThrow().stream().map(ChangeWords::held).collect(Collectors.joining(", "));
    }

    public static String reasons(WorstCase worst) {
        return worst.reasons().stream()
                .map(reason -> PlantWords.get("worst." + reason.code()))
                .collect(Collectors.joining(", "));
    }
}

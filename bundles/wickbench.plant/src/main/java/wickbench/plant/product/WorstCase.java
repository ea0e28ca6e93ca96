package wickbench.plant.product;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import wickbench.api.words.Coded;

/**
 * Which product of a line is hardest to get off, with the reasons: by that one a clean is shown to work.
 *
 * <p>Hardest soil first, then the highest share of an allergen, then the form that clings or scatters most, then the number of
 * allergens. Common practice, no source; a site may choose otherwise and says why.
 *
 * @param reasons that tell it from the others, the weightiest first
 */
public record WorstCase(Product product, List<Reason> reasons) {
    private static final Comparator<Product> HARDNESS = Comparator.comparing(Product::soil)
            .thenComparing(WorstCase::most)
            .thenComparing(WorstCase::form)
            .thenComparing(product -> product.allergens().size());

    public WorstCase {
        reasons = List.copyOf(reasons);
    }

    /** Why it is harder than another. */
    public enum Reason implements Coded {
        HARDEST_SOIL,
        HIGHEST_SHARE,
        HARDEST_FORM,
        MOST_ALLERGENS,
        /** Nothing tells it from another; it comes first by its name. */
        NONE_HARDER,
        ONLY_ONE
    }

    /**
     * Ranks products that hold an allergen, the hardest first; those of which nothing is stated are left out.
     *
     * @param among codes of allergens that the clean is for; empty for all
     */
    public static List<WorstCase> rank(List<Product> products, Set<String> among) {
        List<Product> holding = products.stream()
                .filter(product -> !product.allergens().isEmpty())
                .filter(product ->
                        among.isEmpty() || product.allergens().stream().anyMatch(among::contains))
                .sorted(HARDNESS.reversed().thenComparing(Product::id))
                .toList();
        return holding.stream()
                .map(product -> new WorstCase(product, reasons(product, holding)))
                .toList();
    }

    private static List<Reason> reasons(Product product, List<Product> all) {
        List<Product> others = all.stream().filter(other -> other != product).toList();
        if (others.isEmpty()) {
            return List.of(Reason.ONLY_ONE);
        }
        List<Reason> reasons = new ArrayList<>();
        tells(product, others, Comparator.comparing(Product::soil), Reason.HARDEST_SOIL, reasons);
        tells(product, others, Comparator.comparing(WorstCase::most), Reason.HIGHEST_SHARE, reasons);
        tells(product, others, Comparator.comparing(WorstCase::form), Reason.HARDEST_FORM, reasons);
        tells(product, others, Comparator.comparing(one -> one.allergens().size()), Reason.MOST_ALLERGENS, reasons);
        return reasons.isEmpty() ? List.of(Reason.NONE_HARDER) : reasons;
    }

    /** A reason is one where no other is harder and at least one is less hard. */
    private static void tells(
            Product product, List<Product> others, Comparator<Product> by, Reason reason, List<Reason> reasons) {
        boolean none = others.stream().noneMatch(other -> by.compare(other, product) > 0);
        boolean some = others.stream().anyMatch(other -> by.compare(other, product) < 0);
        if (none && some) {
            reasons.add(reason);
        }
    }

    private static BigDecimal most(Product product) {
        return product.holds().orElse(List.of()).stream()
                .flatMap(held -> held.percent().stream())
                .max(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
    }

    private static Form form(Product product) {
        return product.holds().orElse(List.of()).stream()
                .map(Contained::form)
                .max(Comparator.naturalOrder())
                .orElse(Form.LIQUID);
    }
}

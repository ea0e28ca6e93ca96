package wickbench.plant.clean;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.entry.Taking;
import wickbench.plant.site.Sampling;

/**
 * A series of cleans by which one is shown to work; the body of {@code validation.opened}.
 *
 * @param product the worst case
 * @param reasons why it is that, in codes or words
 * @param allergens for which the clean is valid afterwards
 * @param points that must be Negative after each clean of the series
 */
public record Series(String clean, String product, List<String> reasons, Set<String> allergens, List<Sampling> points) {
    public static final String KIND = "validation.opened";

    /** So many cleans in a row must pass; common practice, no source. */
    public static final int PASSES = 3;

    public Series {
        reasons = List.copyOf(reasons);
        allergens = Set.copyOf(allergens);
        points = List.copyOf(points);
    }

    public Json.Obj body() {
        return Json.object()
                .with("clean", clean)
                .with("product", product)
                .with("reasons", Json.texts(reasons))
                .with("allergens", Json.texts(new TreeSet<>(allergens).stream().toList()))
                .with("points", Json.array(points.stream().map(Sampling::json).toList()));
    }

    /** Reads a body. */
    public static Checked<Series> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String clean = fields.text("clean");
        String product = fields.text("product");
        List<String> reasons = List.copyOf(taking.names("reasons"));
        Set<String> allergens = Set.copyOf(taking.values("allergens", Allergens::known));
        List<Sampling> points = fields.children("points").stream()
                .flatMap(point -> Sampling.read(point).stream())
                .toList();
        if (allergens.isEmpty() || points.isEmpty() || reasons.isEmpty()) {
            fields.complain("points", "expected reasons, allergens and points, at least one of each");
        }
        return fields.finish(() -> new Series(clean, product, reasons, allergens, points));
    }
}

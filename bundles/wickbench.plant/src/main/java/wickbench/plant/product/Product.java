package wickbench.plant.product;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * A product; the body of {@code product.stated}.
 *
 * @param lines on which it is made
 * @param holds its allergens: none when the list is empty; not stated, which is not the same, when it is absent
 * @param soil how it sticks
 */
public record Product(String id, String name, Set<String> lines, Optional<List<Contained>> holds, Soil soil) {
    public static final String KIND = "product.stated";

    public Product {
        lines = Set.copyOf(lines);
        holds = holds.map(List::copyOf);
    }

    /** Tells whether anybody has said which allergens it holds, if any. */
    public boolean stated() {
        return holds.isPresent();
    }

    /** Returns the codes of its allergens, in order; none where they are not stated. */
    public Set<String> allergens() {
        return holds.orElse(List.of()).stream().map(Contained::allergen).collect(Collectors.toCollection(TreeSet::new));
    }

    public Json.Obj body() {
        Json.Obj body = Json.object()
                .with("product", id)
                .with("name", name)
                .with("lines", Json.texts(new TreeSet<>(lines).stream().toList()))
                .with("soil", soil.code());
        return holds.map(all -> body.with(
                        "allergens",
                        Json.array(all.stream().map(Contained::json).toList())))
                .orElseGet(() -> body.with("not_stated", true));
    }

    /** Reads a body. */
    public static Checked<Product> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String id = fields.text("product");
        String name = fields.text("name");
        Set<String> lines = taking.names("lines");
        boolean unknown = fields.has("not_stated") && fields.flag("not_stated");
        boolean said = fields.has("allergens");
        if (said == unknown) {
            fields.complain(
                    "allergens",
                    said
                            ? "expected either allergens or not_stated, found both"
                            : "are not stated; expected a list, [] where it holds none, or \"not_stated\": true where nobody"
                                    + " knows");
        }
        List<Optional<Contained>> holds =
                fields.children("allergens").stream().map(Contained::read).toList();
        Optional<Soil> soil = fields.has("soil") ? taking.choice("soil", Soil.class) : Optional.of(Soil.LIGHT);
        return fields.finish(() -> new Product(
                id,
                name,
                lines,
                said ? Optional.of(holds.stream().flatMap(Optional::stream).toList()) : Optional.empty(),
                soil.orElseThrow()));
    }
}

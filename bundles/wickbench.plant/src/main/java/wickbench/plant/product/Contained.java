package wickbench.plant.product;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.entry.Taking;

/**
 * An allergen in a product.
 *
 * @param allergen its code
 * @param part what of it the product holds, for example whey protein; empty for the whole of it, or where it is not known
 * @param percent how much of the product it is by mass, if known
 */
public record Contained(String allergen, Form form, Optional<String> part, Optional<BigDecimal> percent) {

    Json.Obj json() {
        return Json.object()
                .with("allergen", allergen)
                .with("form", form.code())
                .withText("part", part)
                .withOptional("percent", percent.map(Json.Num::new));
    }

    static Optional<Contained> read(Fields fields) {
        Taking taking = Taking.part(fields);
        Optional<String> allergen = taking.needed("allergen", Allergens::known);
        Optional<Form> form = taking.choice("form", Form.class);
        Optional<String> part = fields.optionalText("part");
        Optional<BigDecimal> percent = taking.between("percent", "0", "100");
        return allergen.flatMap(code -> form.map(some -> new Contained(code, some, part, percent)));
    }
}

package wickbench.plant.site;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * Where a point lies on the floor picture; the body of {@code point.placed}. The newest holds.
 *
 * @param x share of the width from the left, 0 to 1, so that it still fits when the picture comes anew in another size
 * @param y share of the height from the top, 0 to 1
 */
public record Spot(String point, BigDecimal x, BigDecimal y) {
    public static final String KIND = "point.placed";

    public Json.Obj body() {
        return Json.object().with("point", point).with("x", x).with("y", y);
    }

    /** Reads a body. */
    public static Checked<Spot> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String point = fields.text("point");
        Optional<BigDecimal> x = taking.between("x", "0", "1");
        Optional<BigDecimal> y = taking.between("y", "0", "1");
        if (x.isEmpty() || y.isEmpty()) {
            fields.complain("x", "expected x and y");
        }
        return fields.finish(() -> new Spot(point, x.orElseThrow(), y.orElseThrow()));
    }
}

package wickbench.plant.site;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.plant.entry.Taking;

/**
 * A production line; the body of {@code line.stated}.
 *
 * @param id as samples name it
 * @param areas of which it is made, in the order of the product's way
 * @param changeMinutes what a change takes that asks for no allergen clean
 * @param random how points of the pool are drawn; empty where none are drawn at random
 */
public record Line(String id, String name, List<String> areas, int changeMinutes, Optional<Random> random) {
    public static final String KIND = "line.stated";

    /** Longest change that can be stated, in minutes. */
    public static final int LONGEST = 10_000;

    public Line {
        areas = List.copyOf(areas);
    }

    /**
     * How many points of the pool are drawn at random: enough to find one, with this confidence, if at least this share of them is
     * soiled.
     */
    public record Random(BigDecimal share, BigDecimal confidence) {}

    public Json.Obj body() {
        Json.Obj body = Json.object()
                .with("line", id)
                .with("name", name)
                .with("change_min", changeMinutes)
                .withOptional(
                        "random",
                        random.map(draw ->
                                Json.object().with("share", draw.share()).with("confidence", draw.confidence())));
        return areas.isEmpty() ? body : body.with("areas", Json.texts(areas));
    }

    /** Reads a body. */
    public static Checked<Line> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String id = fields.text("line");
        String name = fields.text("name");
        List<String> areas = List.copyOf(taking.names("areas"));
        int minutes = taking.whole("change_min", 0, LONGEST, Optional.of(0));
        Optional<Optional<Random>> random = fields.optionalChild("random").map(Line::random);
        return fields.finish(() -> new Line(id, name, areas, minutes, random.flatMap(draw -> draw)));
    }

    private static Optional<Random> random(Fields fields) {
        Taking taking = Taking.part(fields);
        Optional<BigDecimal> share = taking.between("share", "0.001", "1");
        Optional<BigDecimal> confidence = taking.between("confidence", "0.5", "0.999");
        if (share.isEmpty() || confidence.isEmpty()) {
            fields.complain("share", "expected share and confidence");
        }
        return share.flatMap(some -> confidence.map(sure -> new Random(some, sure)));
    }
}

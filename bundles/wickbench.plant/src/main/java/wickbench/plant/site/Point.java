package wickbench.plant.site;

import java.util.List;
import java.util.Optional;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.plant.entry.Taking;

/**
 * A sampling point; the body of {@code point.stated}.
 *
 * @param name as samples name their place
 * @param hard why it is hard to clean, in the site's words
 * @param methods by which it may be sampled, the preferred first
 * @param drawn it belongs to the pool from which points are drawn at random; else the risk assessment names it and it is always taken
 */
public record Point(
        String name,
        String line,
        Optional<String> area,
        Surface surface,
        Optional<String> hard,
        List<MethodId> methods,
        boolean drawn) {
    public static final String KIND = "point.stated";

    public Point {
        methods = List.copyOf(methods);
    }

    public Json.Obj body() {
        return Json.object()
                .with("point", name)
                .with("line", line)
                .with("surface", surface.code())
                .with(
                        "methods",
                        Json.texts(methods.stream().map(MethodId::value).toList()))
                .with("drawn", drawn)
                .withText("area", area)
                .withText("hard", hard);
    }

    /** Reads a body. */
    public static Checked<Point> read(Fields fields) {
        Taking taking = Taking.body(fields);
        String name = fields.text("point");
        String line = fields.text("line");
        Optional<String> area = fields.optionalText("area");
        Optional<Surface> surface = taking.choice("surface", Surface.class);
        Optional<String> hard = fields.optionalText("hard");
        List<MethodId> methods = taking.values("methods", MethodId::new);
        boolean drawn = fields.has("drawn") && fields.flag("drawn");
        return fields.finish(() -> new Point(name, line, area, surface.orElseThrow(), hard, methods, drawn));
    }
}

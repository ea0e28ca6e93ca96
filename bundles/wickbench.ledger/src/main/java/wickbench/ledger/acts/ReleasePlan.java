package wickbench.ledger.acts;

import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;

/**
 * The body of {@code release.planned}: what the site's food-safety plan asks of a line before a release. The newest holds.
 *
 * @param points none means that this line is released no more
 */
public record ReleasePlan(String line, List<Point> points, String reason) {
    public static final String KIND = "release.planned";
    public static final int VERSION = 1;

    public ReleasePlan {
        points = List.copyOf(points);
    }

    public Json.Obj body() {
        return Json.object()
                .with("line", line)
                .with(
                        "points",
                        Json.array(points.stream()
                                .map(point -> (Json) Json.object()
                                        .with("place", point.place())
                                        .with("method", point.method().value()))
                                .toList()))
                .with("reason", reason);
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<ReleasePlan> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<ReleasePlan> read(Fields fields) {
        String line = fields.text("line");
        List<Optional<Point>> points =
                fields.children("points").stream().map(ReleasePlan::point).toList();
        String reason = fields.text("reason");
        fields.has(Signature.MEMBER);
        return fields.finish(() ->
                new ReleasePlan(line, points.stream().flatMap(Optional::stream).toList(), reason));
    }

    private static Optional<Point> point(Fields fields) {
        String place = fields.text("place");
        Optional<MethodId> method = fields.optional("method", MethodId::new);
        if (!fields.has("method")) {
            fields.complain("method", "is missing");
        }
        return method.map(id -> new Point(place, id));
    }
}

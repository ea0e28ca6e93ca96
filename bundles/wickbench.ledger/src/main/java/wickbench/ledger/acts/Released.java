package wickbench.ledger.acts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.words.Coded;

/**
 * The body of {@code release.recorded}: a releaser let a line or batch go.
 *
 * @param rests the statements on which it rests: the Negative of each planned point
 */
public record Released(Subject subject, List<UUID> rests, String reason) {
    public static final String KIND = "release.recorded";
    public static final int VERSION = 1;

    public Released {
        rests = List.copyOf(rests);
    }

    public Json.Obj body() {
        return Json.object()
                .with("sort", subject.sort().code())
                .with("name", subject.name())
                .with("rests", Json.texts(rests.stream().map(UUID::toString).toList()))
                .with("reason", reason);
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<Released> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<Released> read(Fields fields) {
        Optional<Subject.Sort> sort = fields.optional("sort", code -> Coded.of(Subject.Sort.class, code));
        String name = fields.text("name");
        List<UUID> rests = new ArrayList<>();
        for (String text : fields.texts("rests")) {
            try {
                rests.add(UUID.fromString(text));
            } catch (IllegalArgumentException e) {
                fields.complain("rests", "expected ids of entries, found " + text);
            }
        }
        String reason = fields.text("reason");
        fields.has(Signature.MEMBER);
        if (sort.isEmpty()) {
            fields.complain("sort", "expected batch or line");
        }
        return fields.finish(() -> new Released(new Subject(sort.orElseThrow(), name), rests, reason));
    }
}

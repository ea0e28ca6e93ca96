package wickbench.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/**
 * The body of {@code reading.reviewed}: somebody who did not read these strips has looked over what was said of them.
 *
 * <p>It names statements, not results: what is corrected later has not been reviewed.
 *
 * @param statements the entries that recorded or corrected the readings
 */
public record Reviewed(List<UUID> statements, Optional<String> remark) {
    public static final String KIND = "reading.reviewed";
    public static final int VERSION = 1;

    public Reviewed {
        statements = List.copyOf(statements);
    }

    public Json.Obj body() {
        return Json.object()
                .with(
                        "statements",
                        Json.texts(statements.stream().map(UUID::toString).toList()))
                .withText("remark", remark);
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<Reviewed> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<Reviewed> read(Fields fields) {
        List<UUID> statements = new ArrayList<>();
        for (String text : fields.texts("statements")) {
            try {
                statements.add(UUID.fromString(text));
            } catch (IllegalArgumentException e) {
                fields.complain("statements", "expected ids of entries, found " + text);
            }
        }
        Optional<String> remark = fields.optionalText("remark");
        fields.has(Signature.MEMBER);
        return fields.finish(() -> new Reviewed(statements, remark));
    }
}

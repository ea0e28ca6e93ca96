package wickbench.api.owed;

import java.util.Optional;
import java.util.UUID;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.reading.Owed;
import wickbench.api.words.Coded;

/**
 * The body of {@code owed.ordered}: an authorised person has decided that something is owed that no verdict asks for, or once more.
 *
 * @param owes the reading because of which
 * @param owed a repeat, a hold, a re-clean or a re-test
 * @param reason why, in their words
 */
public record Ordered(UUID owes, Owed owed, String reason) {
    public static final String KIND = "owed.ordered";
    public static final int VERSION = 1;

    public Json.Obj body() {
        return Json.object()
                .with("owes", owes.toString())
                .with("owed", owed.code())
                .with("reason", reason);
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<Ordered> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<Ordered> read(Fields fields) {
        Optional<UUID> owes = fields.optional("owes", UUID::fromString);
        Optional<Owed> owed = fields.optional("owed", code -> Coded.of(Owed.class, code));
        String reason = fields.text("reason");
        fields.has(Signature.MEMBER);
        if (owes.isEmpty() || owed.isEmpty()) {
            fields.complain("owes", "expected owes and owed");
        }
        return fields.finish(() -> new Ordered(owes.orElseThrow(), owed.orElseThrow(), reason));
    }
}

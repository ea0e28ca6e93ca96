package wickbench.api.owed;

import java.util.ArrayList;
import java.util.List;
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
 * The body of {@code owed.settled}: an authorised person has decided on something owed.
 *
 * @param owes the entry that owes it; of results in doubt also the entry that doubts them
 * @param reason what was decided and why, in their words
 * @param about of results in doubt: the doubts that were decided on, by entry, or, where {@code owes} is the doubt, the results.
 *     What is not named was not known and stays open
 */
public record Settled(UUID owes, Owed owed, String reason, List<UUID> about) {
    public static final String KIND = "owed.settled";
    public static final int VERSION = 1;

    public Settled {
        about = List.copyOf(about);
    }

    public Json.Obj body() {
        Json.Obj body = Json.object()
                .with("owes", owes.toString())
                .with("owed", owed.code())
                .with("reason", reason);
        return about.isEmpty()
                ? body
                : body.with(
                        "about", Json.texts(about.stream().map(UUID::toString).toList()));
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<Settled> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<Settled> read(Fields fields) {
        Optional<UUID> owes = fields.optional("owes", UUID::fromString);
        Optional<Owed> owed = fields.optional("owed", code -> Coded.of(Owed.class, code));
        String reason = fields.text("reason");
        List<UUID> about = ids(fields);
        fields.has(Signature.MEMBER);
        if (owes.isEmpty() || owed.isEmpty()) {
            fields.complain("owes", "expected owes and owed");
        }
        return fields.finish(() -> new Settled(owes.orElseThrow(), owed.orElseThrow(), reason, about));
    }

    private static List<UUID> ids(Fields fields) {
        List<UUID> ids = new ArrayList<>();
        for (String text : fields.texts("about")) {
            try {
                ids.add(UUID.fromString(text));
            } catch (IllegalArgumentException e) {
                fields.complain("about", "expected ids of entries, found " + text);
            }
        }
        return ids;
    }
}

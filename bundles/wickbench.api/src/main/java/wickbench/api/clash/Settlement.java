package wickbench.api.clash;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/**
 * The body of {@code clash.settled}: a person says by which of the clashing decisions a subject stands.
 *
 * <p>The schema is {@code docs/formats/clash.settled-1.schema.json}. It is itself a decision, so two settlements that had not
 * seen one another clash again. A view that lets a subject stand by the chosen entry takes entries of this kind.
 *
 * @param subject as in {@link Decision}
 * @param stands the decision that is chosen
 * @param among all decisions that clashed, the chosen one too
 */
public record Settlement(String subject, EntryRef stands, List<EntryRef> among, String reason) {
    public static final String KIND = "clash.settled";
    public static final int VERSION = 1;

    public Settlement {
        among = List.copyOf(among);
    }

    public Json.Obj body() {
        return Json.object()
                .with("subject", subject)
                .with("stands", stands.toString())
                .with("among", Json.texts(among.stream().map(EntryRef::toString).toList()))
                .with("reason", reason);
    }

    /** Reads an entry; empty when it is of another kind or version, or says nothing that can be read. */
    public static Optional<Settlement> of(Entry entry) {
        return entry.is(KIND, VERSION) && read(entry) instanceof Checked.Good<Settlement> good
                ? Optional.of(good.value())
                : Optional.empty();
    }

    private static Checked<Settlement> read(Entry entry) {
        Fields fields = Fields.of(entry.ref().toString(), entry.body());
        String subject = fields.text("subject");
        Optional<EntryRef> stands = fields.optional("stands", EntryRef::parse);
        List<EntryRef> among = refs(fields);
        String reason = fields.text("reason");
        fields.has(Signature.MEMBER);
        if (stands.isEmpty()) {
            fields.complain("stands", "expected STATION:NUMBER");
        }
        return fields.finish(() -> new Settlement(subject, stands.orElseThrow(), among, reason));
    }

    private static List<EntryRef> refs(Fields fields) {
        List<EntryRef> refs = new ArrayList<>();
        for (String text : fields.texts("among")) {
            try {
                refs.add(EntryRef.parse(text));
            } catch (IllegalArgumentException e) {
                fields.complain("among", e.getMessage());
            }
        }
        return refs;
    }
}

package wickbench.api.authority;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.person.PersonId;
import wickbench.api.words.Coded;

/**
 * A name under an entry: who, when, what for, and bound to just this content (21 CFR 11.50, 11.70).
 *
 * <p>It stands in the body as member {@code signature}, a witness's as {@code witness}. The bond is the SHA-256 of the RFC 8785
 * form of {@code {at, body, by, id, kind, meaning, v}}, the body without these two members. The entry's id is unique, so a
 * signature fits one entry for ever and no other. What it proves rests on the journal's seal, as everything in the entry does.
 *
 * @param at when it was signed, to the millisecond
 * @param meaning the act that it stands under
 */
public record Signature(PersonId by, Instant at, Act meaning, Hash boundTo) {
    /** The member that holds it. */
    public static final String MEMBER = "signature";

    /** The member that holds a witness's. */
    public static final String WITNESS = "witness";

    private static final Set<String> ASKING =
            Set.of("method.issued", "method.withdrawn", "reading.corrected", "profile.issued", "person.forgotten");

    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    /** Returns a signature bound to a draft. Makes no draft signed: only {@link Authority} does, having seen the passphrase. */
    public static Signature of(Draft draft, PersonId by, Instant at, Act meaning) {
        Instant when = at.truncatedTo(ChronoUnit.MILLIS);
        return new Signature(
                by, when, meaning, bond(draft.id(), draft.kind(), draft.v(), draft.body(), by, when, meaning));
    }

    public Json.Obj json() {
        return Json.object()
                .with("by", by.value())
                .with("at", MILLIS.format(at))
                .with("meaning", meaning.code())
                .with("bound_to", boundTo.hex());
    }

    /** Tells whether it was given for this entry, as it is. */
    public boolean fits(Entry entry) {
        return boundTo.equals(bond(entry.id(), entry.kind(), entry.v(), entry.body(), by, at, meaning));
    }

    /** Tells whether entries of a kind ask for a signature; those without one are marked unsigned for ever. */
    public static boolean asked(String kind) {
        return ASKING.contains(kind);
    }

    /** Returns what stands under an entry. */
    public static Standing under(Entry entry) {
        return under(entry, MEMBER);
    }

    /** Returns what stands under an entry in one of the two members. */
    public static Standing under(Entry entry, String member) {
        Optional<Json> found = entry.body().get(member);
        if (found.isEmpty()) {
            return new Standing.Unsigned();
        }
        Checked<Signature> read = found.get() instanceof Json.Obj object
                ? read(entry.ref().toString(), object)
                : Checked.bad(wickbench.api.check.Complaint.of(entry.ref().toString(), member, "expected an object"));
        if (read instanceof Checked.Good<Signature> good && good.value().fits(entry)) {
            return new Standing.Signed(good.value());
        }
        return new Standing.Foreign();
    }

    /** What stands under an entry. */
    public sealed interface Standing {

        /** A signature given for this entry. */
        record Signed(Signature signature) implements Standing {}

        /** None; and since entries never change, none for ever. */
        record Unsigned() implements Standing {}

        /** Something that was not given for this entry, as it is. */
        record Foreign() implements Standing {}

        default boolean signed() {
            return this instanceof Signed;
        }
    }

    private static Checked<Signature> read(String source, Json.Obj object) {
        Fields fields = Fields.of(source, object);
        Optional<PersonId> by = fields.optional("by", PersonId::new);
        Optional<Instant> at = fields.optionalInstant("at");
        Optional<Act> meaning = fields.optional("meaning", code -> Coded.of(Act.class, code));
        Optional<Hash> bond = fields.optional("bound_to", Hash::new);
        if (by.isEmpty() || at.isEmpty() || meaning.isEmpty() || bond.isEmpty()) {
            fields.complain(MEMBER, "expected by, at, meaning and bound_to");
        }
        return fields.finish(
                () -> new Signature(by.orElseThrow(), at.orElseThrow(), meaning.orElseThrow(), bond.orElseThrow()));
    }

    private static Hash bond(UUID id, String kind, int v, Json.Obj body, PersonId by, Instant at, Act meaning) {
        return Hash.ofContent(Json.object()
                .with("at", MILLIS.format(at))
                .with("body", bare(body))
                .with("by", by.value())
                .with("id", id.toString())
                .with("kind", kind)
                .with("meaning", meaning.code())
                .with("v", v)
                .canonical());
    }

    private static Json.Obj bare(Json.Obj body) {
        Map<String, Json> members = new LinkedHashMap<>(body.members());
        members.remove(MEMBER);
        members.remove(WITNESS);
        return new Json.Obj(members);
    }
}

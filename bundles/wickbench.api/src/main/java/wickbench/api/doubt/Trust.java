package wickbench.api.doubt;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;

/**
 * From when on doubts touch no further strip: a lot was released, an operator authorised anew.
 *
 * <p>Stands in the body of whatever entry says so. What was touched before still waits for its decision.
 *
 * @param doubts the entries that hold them
 * @param from strips started from then on are trusted
 */
public record Trust(List<UUID> doubts, Instant from) {
    /** The member of a body that holds it. */
    public static final String MEMBER = "trusted_again";

    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    public Trust {
        doubts = List.copyOf(doubts);
    }

    /** Returns a body with this in it; the body alone where no doubt ends. */
    public Json.Obj into(Json.Obj body) {
        return doubts.isEmpty()
                ? body
                : body.with(
                        MEMBER,
                        Json.object()
                                .with(
                                        "doubts",
                                        Json.texts(doubts.stream()
                                                .map(UUID::toString)
                                                .toList()))
                                .with("from", MILLIS.format(from)));
    }

    /** Returns what a body says of it, whatever else it says. */
    public static Optional<Trust> in(String source, Json.Obj body) {
        return body.get(MEMBER)
                .map(member -> read(Fields.of(source, Json.object().with(MEMBER, member))));
    }

    private static Trust read(Fields fields) {
        Fields member = fields.child(MEMBER);
        List<UUID> doubts = new ArrayList<>();
        for (String text : member.texts("doubts")) {
            try {
                doubts.add(UUID.fromString(text));
            } catch (IllegalArgumentException e) {
                member.complain("doubts", "expected ids of entries, found " + text);
            }
        }
        Optional<Instant> from = member.optionalInstant("from");
        if (!member.has("from")) {
            member.complain("from", "is missing");
        }
        Checked<Trust> read = fields.finish(() -> new Trust(doubts, from.orElseThrow()));
        return read.orRefuse();
    }
}

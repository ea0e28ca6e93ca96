package wickbench.ledger.acts;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
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
 * The body of {@code action.decided}: what an authorised person decided because of a result.
 *
 * @param result the reading because of which
 * @param products the batches that it is about; none where the product has no name
 * @param reason in their words
 * @param cause the root cause, where it is known by then
 * @param lastGood as it was known then; product made since is in question
 */
public record Decided(
        UUID result,
        Move move,
        List<String> products,
        String reason,
        Optional<String> cause,
        Optional<LastGood> lastGood) {
    public static final String KIND = "action.decided";
    public static final int VERSION = 1;

    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    public Decided {
        products = List.copyOf(products);
    }

    public Json.Obj body() {
        return Json.object()
                .with("result", result.toString())
                .with("move", move.code())
                .with("products", Json.texts(products))
                .with("reason", reason)
                .withText("cause", cause)
                .withOptional(
                        "last_good",
                        lastGood.map(good -> Json.object()
                                .with("result", good.result().toString())
                                .with("at", MILLIS.format(good.at()))));
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<Decided> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<Decided> read(Fields fields) {
        Optional<UUID> result = fields.optional("result", UUID::fromString);
        Optional<Move> move = fields.optional("move", code -> Coded.of(Move.class, code));
        List<String> products = fields.texts("products");
        String reason = fields.text("reason");
        Optional<String> cause = fields.optionalText("cause");
        Optional<Fields> good = fields.optionalChild("last_good");
        Optional<UUID> goodResult = good.flatMap(each -> each.optional("result", UUID::fromString));
        Optional<Instant> goodAt = good.flatMap(each -> each.optionalInstant("at"));
        fields.has(Signature.MEMBER);
        if (result.isEmpty() || move.isEmpty()) {
            fields.complain("result", "expected result and move");
        }
        if (good.isPresent() && (goodResult.isEmpty() || goodAt.isEmpty())) {
            fields.complain("last_good", "expected result and at");
        }
        return fields.finish(() -> new Decided(
                result.orElseThrow(),
                move.orElseThrow(),
                products,
                reason,
                cause,
                goodResult.map(id -> new LastGood(id, goodAt.orElseThrow()))));
    }
}

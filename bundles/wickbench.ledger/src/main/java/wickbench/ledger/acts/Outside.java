package wickbench.ledger.acts;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;
import wickbench.api.words.Coded;

/**
 * The body of {@code outside.reported}: what another laboratory found.
 *
 * @param laboratory its name
 * @param reference the number of its report
 * @param sample what was sent, by the label on it
 * @param target what was looked for
 * @param detected whether the laboratory reports it as detected
 * @param amount found, or, where it was not detected, the limit below which it lies; empty where the report states none
 * @param basis what the amount counts, such as total protein; empty only without an amount
 * @param batch which it speaks for
 * @param results the results because of which it was asked
 * @param reported when the report was issued
 */
public record Outside(
        String laboratory,
        String reference,
        String sample,
        String target,
        boolean detected,
        Optional<Quantity> amount,
        Optional<Basis> basis,
        Optional<String> batch,
        List<UUID> results,
        Instant reported) {
    public static final String KIND = "outside.reported";
    public static final int VERSION = 1;

    public Outside {
        results = List.copyOf(results);
        if (amount.isPresent() != basis.isPresent()) {
            throw new IllegalArgumentException("expected an amount with its basis, or neither");
        }
        if (detected && amount.isPresent() && amount.get().value().signum() <= 0) {
            throw new IllegalArgumentException(
                    "expected an amount above 0 where it was detected, found " + amount.get());
        }
    }

    public Json.Obj body() {
        return Json.object()
                .with("laboratory", laboratory)
                .with("reference", reference)
                .with("sample", sample)
                .with("target", target)
                .with("detected", detected)
                .withOptional(
                        "amount",
                        amount.map(each -> Json.object()
                                .with("value", each.value())
                                .with("unit", each.unit().symbol())
                                .with("basis", basis.orElseThrow().code())))
                .withText("batch", batch)
                .with("results", Json.texts(results.stream().map(UUID::toString).toList()))
                .with("reported", reported.toString());
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<Outside> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<Outside> read(Fields fields) {
        String laboratory = fields.text("laboratory");
        String reference = fields.text("reference");
        String sample = fields.text("sample");
        String target = fields.text("target");
        boolean detected = fields.flag("detected");
        Optional<Fields> amount = fields.optionalChild("amount");
        Optional<Quantity> quantity = amount.map(
                each -> new Quantity(each.decimal("value"), unit(each).orElse(Unit.PIECE)));
        Optional<Basis> basis = amount.flatMap(each -> each.optional("basis", code -> Coded.of(Basis.class, code)));
        Optional<String> batch = fields.optionalText("batch");
        List<UUID> results = results(fields);
        Optional<Instant> reported = fields.optionalInstant("reported");
        if (reported.isEmpty()) {
            fields.complain("reported", "is missing");
        }
        return fields.finish(() -> new Outside(
                laboratory,
                reference,
                sample,
                target,
                detected,
                quantity,
                basis,
                batch,
                results,
                reported.orElseThrow()));
    }

    private static Optional<Unit> unit(Fields amount) {
        Optional<Unit> unit = amount.optional("unit", Unit::ofSymbol);
        if (!amount.has("unit")) {
            amount.complain("unit", "is missing");
        }
        return unit;
    }

    private static List<UUID> results(Fields fields) {
        List<UUID> results = new ArrayList<>();
        for (String text : fields.texts("results")) {
            try {
                results.add(UUID.fromString(text));
            } catch (IllegalArgumentException e) {
                fields.complain("results", "expected ids of entries, found " + text);
            }
        }
        return results;
    }
}

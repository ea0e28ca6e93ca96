package wickbench.api.doubt;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import wickbench.api.check.Checked;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.lot.LotId;
import wickbench.api.method.MethodId;
import wickbench.api.person.PersonId;

/**
 * Which results an entry puts in doubt; the schema is {@code docs/formats/doubt-1.schema.json}.
 *
 * <p>All that is stated must fit. A decision names the entry that holds it, so several of one entry are decided on together.
 *
 * @param cause a rule's code, such as {@code lot.rejected}, {@code operator.suspended}, {@code method.withdrawn}
 * @param from strips started from then on; empty means ever
 * @param to strips started before; empty means without end
 */
public record Doubt(
        String cause,
        Optional<LotId> lot,
        Optional<MethodId> method,
        Optional<PersonId> operator,
        Optional<Instant> from,
        Optional<Instant> to) {
    /** The member of a body that holds them. */
    public static final String MEMBER = "doubts";

    private static final DateTimeFormatter MILLIS =
            new DateTimeFormatterBuilder().appendInstant(3).toFormatter();

    private static final Pattern CAUSE = Pattern.compile("[a-z][a-z0-9-]*(\\.[a-z0-9-]+)*");

    public Doubt {
        if (!CAUSE.matcher(cause).matches()) {
            throw new IllegalArgumentException("expected a cause such as lot.rejected, found '" + cause + "'");
        }
        if (lot.isEmpty() && method.isEmpty() && operator.isEmpty()) {
            throw new IllegalArgumentException("expected a lot, a method or an operator");
        }
    }

    public static Doubt ofLot(String cause, LotId lot, Optional<Instant> from) {
        return new Doubt(cause, Optional.of(lot), Optional.empty(), Optional.empty(), from, Optional.empty());
    }

    public static Doubt ofOperator(String cause, PersonId operator, Optional<Instant> from) {
        return new Doubt(cause, Optional.empty(), Optional.empty(), Optional.of(operator), from, Optional.empty());
    }

    public static Doubt ofMethod(String cause, MethodId method, Optional<Instant> from) {
        return new Doubt(cause, Optional.empty(), Optional.of(method), Optional.empty(), from, Optional.empty());
    }

    /** Tells whether it is about a strip. */
    public boolean touches(LotId ofLot, MethodId byMethod, PersonId byOperator, Instant started) {
        return lot.filter(each -> !each.equals(ofLot)).isEmpty()
                && method.filter(each -> !each.equals(byMethod)).isEmpty()
                && operator.filter(each -> !each.equals(byOperator)).isEmpty()
                && from.filter(started::isBefore).isEmpty()
                && to.filter(end -> !started.isBefore(end)).isEmpty();
    }

    /** Returns a body with these in it. */
    public static Json.Obj into(Json.Obj body, List<Doubt> doubts) {
        return doubts.isEmpty()
                ? body
                : body.with(MEMBER, Json.array(doubts.stream().map(Doubt::json).toList()));
    }

    /**
     * Returns those that a body holds, whatever else it says.
     *
     * @param source where it stands, for the complaint
     */
    public static List<Doubt> in(String source, Json.Obj body) {
        return body.get(MEMBER)
                .map(member -> read(Fields.of(source, Json.object().with(MEMBER, member))))
                .orElse(List.of());
    }

    private static List<Doubt> read(Fields fields) {
        List<Parts> parts = fields.children(MEMBER).stream().map(Parts::of).toList();
        Checked<List<Doubt>> read =
                fields.finish(() -> parts.stream().map(Parts::doubt).toList());
        return read.orRefuse();
    }

    private Json.Obj json() {
        return Json.object()
                .with("cause", cause)
                .withText("lot", lot.map(LotId::value))
                .withText("method", method.map(MethodId::value))
                .withText("operator", operator.map(PersonId::value))
                .withText("from", from.map(MILLIS::format))
                .withText("to", to.map(MILLIS::format));
    }

    /** The members as read; put together only where nothing was wrong with them. */
    private record Parts(
            String cause,
            Optional<LotId> lot,
            Optional<MethodId> method,
            Optional<PersonId> operator,
            Optional<Instant> from,
            Optional<Instant> to) {
        static Parts of(Fields fields) {
            Parts parts = new Parts(
                    fields.text("cause"),
                    fields.optional("lot", LotId::new),
                    fields.optional("method", MethodId::new),
                    fields.optional("operator", PersonId::new),
                    fields.optionalInstant("from"),
                    fields.optionalInstant("to"));
            if (!CAUSE.matcher(parts.cause).matches()) {
                fields.complain("cause", "expected a code such as lot.rejected");
            }
            if (parts.lot.isEmpty() && parts.method.isEmpty() && parts.operator.isEmpty()) {
                fields.complain("lot", "expected a lot, a method or an operator");
            }
            return parts;
        }

        Doubt doubt() {
            return new Doubt(cause, lot, method, operator, from, to);
        }
    }
}

package wickbench.ledger.trend;

import java.time.LocalDate;
import java.util.Optional;
import wickbench.api.authority.Signature;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.json.Fields;
import wickbench.api.json.Json;
import wickbench.api.method.MethodId;
import wickbench.ledger.Filter;

/**
 * The body of {@code trend.based}: over which period the limits of a trend are reckoned.
 *
 * @param from the first day
 * @param to the last day, included
 * @param reason why that period, in their words
 */
public record TrendBase(
        Optional<String> line,
        Optional<String> place,
        Optional<MethodId> method,
        Optional<String> target,
        LocalDate from,
        LocalDate to,
        String reason) {
    public static final String KIND = "trend.based";
    public static final int VERSION = 1;

    /** Returns the filter of the period. */
    public Filter filter() {
        return Filter.ALL
                .days(Optional.of(from), Optional.of(to))
                .withLine(line)
                .withPlace(place)
                .withMethod(method)
                .withTarget(target);
    }

    /** Returns of which trend this is, as one text: trends of the same line, place, method and target share their limits. */
    public static String scope(Filter filter) {
        return scope(filter.line(), filter.place(), filter.method().map(MethodId::value), filter.target())
                .canonical();
    }

    private static Json.Obj scope(
            Optional<String> line, Optional<String> place, Optional<String> method, Optional<String> target) {
        return Json.object()
                .withText("line", line)
                .withText("place", place)
                .withText("method", method)
                .withText("target", target);
    }

    public Json.Obj body() {
        return scope(line, place, method.map(MethodId::value), target)
                .with("from", from.toString())
                .with("to", to.toString())
                .with("reason", reason);
    }

    /** Reads an entry; empty when it is of another kind or version. */
    public static Optional<TrendBase> of(Entry entry) {
        return entry.is(KIND, VERSION)
                ? Optional.of(
                        read(Fields.of(entry.ref().toString(), entry.body())).orRefuse())
                : Optional.empty();
    }

    private static Checked<TrendBase> read(Fields fields) {
        Optional<String> line = fields.optionalText("line");
        Optional<String> place = fields.optionalText("place");
        Optional<MethodId> method = fields.optional("method", MethodId::new);
        Optional<String> target = fields.optionalText("target");
        Optional<LocalDate> from = fields.optional("from", LocalDate::parse);
        Optional<LocalDate> to = fields.optional("to", LocalDate::parse);
        String reason = fields.text("reason");
        fields.has(Signature.MEMBER);
        if (from.isEmpty() || to.isEmpty()) {
            fields.complain("from", "expected from and to");
        }
        return fields.finish(
                () -> new TrendBase(line, place, method, target, from.orElseThrow(), to.orElseThrow(), reason));
    }
}

package wickbench.reading;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Amounts;
import wickbench.api.method.Method.Limit;
import wickbench.api.method.Method.Timing;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;

/** Reads a method, section by section, and complains of all that is wrong with it. */
final class MethodReader {
    private final Fields fields;

    MethodReader(Fields fields) {
        this.fields = fields;
    }

    Optional<Method> read() {
        Optional<MethodRef> ref = ref();
        String title = fields.text("title");
        String kit = fields.text("kit");
        Optional<String> insert = fields.optionalText("insert_revision");
        Optional<Method.Target> target = MethodLists.target(fields.child("target"));
        Optional<Format> format = Parts.needCode(fields, "format", Format.class);
        Map<LineRole, String> marks = marks(format);
        Optional<Route> route = Parts.needCode(fields, "route", Route.class);
        Optional<Limit> limit = limit(fields.child("limit"));
        Optional<BigDecimal> positiveFrom = positive(fields, "positive_from");
        Optional<BigDecimal> hookOnset = positive(fields, "hook_onset");
        Optional<Seen> faintTest = Parts.code(fields, "faint_test", Seen.class);
        Optional<Timing> timing = timing(fields.child("timing"));
        Optional<Amounts> amounts = amounts(fields.child("amounts"));
        var storage = fields.optionalChild("storage").flatMap(MethodLists::storage);
        var preChecks = MethodLists.preChecks(fields);
        var steps = MethodLists.steps(fields);
        List<String> cautions = MethodLists.texts(fields, "cautions");
        MethodChecks checks = new MethodChecks(fields);
        checks.fit(route, limit, amounts);
        checks.order(limit, positiveFrom, hookOnset);
        checks.lines(format, hookOnset, faintTest);
        return Parts.build(
                fields,
                () -> new Method(
                        ref.orElseThrow(),
                        title,
                        kit,
                        insert,
                        target.orElseThrow(),
                        format.orElseThrow(),
                        marks,
                        route.orElseThrow(),
                        limit.orElseThrow(),
                        positiveFrom,
                        hookOnset,
                        faintTest,
                        timing.orElseThrow(),
                        amounts.orElseThrow(),
                        storage,
                        preChecks,
                        steps,
                        cautions));
    }

    private Optional<MethodRef> ref() {
        Optional<MethodId> id = Parts.needParsed(
                fields,
                "id",
                "a method id of lower-case letters, digits, dots, hyphens and underscores",
                MethodId::new);
        int version = Parts.count(fields, "version");
        return id.map(known -> new MethodRef(known, version));
    }

    /** Takes a mark for each line of the format and for no other. */
    private Map<LineRole, String> marks(Optional<Format> format) {
        Fields marks = fields.child("marks");
        Map<LineRole, String> found = new EnumMap<>(LineRole.class);
        for (LineRole role : LineRole.values()) {
            Optional<String> mark = marks.optionalText(role.code());
            mark.ifPresent(text -> found.put(role, text));
            format.ifPresent(known -> checkMark(marks, known, role));
        }
        return found;
    }

    private static void checkMark(Fields marks, Format format, LineRole role) {
        boolean asked = format.lines().contains(role);
        if (asked && !marks.has(role.code())) {
            marks.complain(
                    role.code(),
                    "is missing; a " + format.code() + " strip has a " + role.code()
                            + " line, so say what is printed beside it");
        }
        if (!asked && marks.has(role.code())) {
            marks.complain(role.code(), "a " + format.code() + " strip has no " + role.code() + " line");
        }
    }

    private static Optional<Limit> limit(Fields fields) {
        Optional<BigDecimal> value = Parts.need(fields, "value", "a number above 0", positive(fields, "value"));
        var unit = Parts.needUnit(fields, "unit");
        var holds = Parts.needCode(fields, "holds", Method.Holds.class);
        Optional<BigDecimal> probability = Parts.decimal(fields, "probability");
        probability
                .filter(some -> some.signum() <= 0 || some.compareTo(BigDecimal.ONE) >= 0)
                .ifPresent(some -> fields.complain(
                        "probability", "expected a probability between 0 and 1, found " + Decimals.text(some)));
        return value.flatMap(number ->
                unit.flatMap(of -> holds.map(where -> new Limit(new Quantity(number, of), where, probability))));
    }

    private static Optional<Timing> timing(Fields fields) {
        Optional<Duration> develop = positiveSpan(fields, "develop_s");
        Optional<Duration> window = positiveSpan(fields, "window_s");
        Optional<Duration> warmUp = Parts.seconds(fields, "warm_up_s");
        Optional<Duration> shake = Parts.seconds(fields, "shake_s");
        Optional<Duration> hold = Parts.seconds(fields, "extract_hold_s");
        return develop.flatMap(time -> window.map(open -> new Timing(time, open, warmUp, shake, hold)));
    }

    private static Optional<Duration> positiveSpan(Fields fields, String name) {
        Optional<Duration> span = Parts.need(fields, name, "seconds above 0", Parts.seconds(fields, name));
        span.filter(Duration::isZero).ifPresent(zero -> fields.complain(name, "expected seconds above 0, found 0"));
        return span;
    }

    private static Optional<Amounts> amounts(Fields fields) {
        Optional<Quantity> sample = MethodLists.positiveQuantity(fields.child("sample"));
        Optional<Quantity> liquid = fields.optionalChild("liquid").flatMap(MethodLists::positiveQuantity);
        return sample.map(taken -> new Amounts(taken, liquid));
    }

    private static Optional<BigDecimal> positive(Fields fields, String name) {
        Optional<BigDecimal> value = Parts.decimal(fields, name);
        value.filter(some -> some.signum() <= 0)
                .ifPresent(some -> fields.complain(name, "expected a number above 0, found " + Decimals.text(some)));
        return value;
    }
}

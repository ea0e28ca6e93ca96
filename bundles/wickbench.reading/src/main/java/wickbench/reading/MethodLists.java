package wickbench.reading;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.json.Fields;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Factor;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Method.Step;
import wickbench.api.method.Method.Target;
import wickbench.api.method.Quantity;
import wickbench.api.method.Unit;

/** Reads the small parts and lists of a method: target, ranges, pre-checks, steps. */
final class MethodLists {
    private MethodLists() {}

    static Optional<Target> target(Fields fields) {
        String name = fields.text("name");
        Optional<Basis> basis = Parts.needCode(fields, "basis", Basis.class);
        List<Factor> factors = fields.children("factors").stream()
                .flatMap(factor -> factor(factor).stream())
                .toList();
        List<String> notSeen = texts(fields, "not_seen");
        return basis.map(known -> new Target(name, known, factors, notSeen));
    }

    private static Optional<Factor> factor(Fields fields) {
        Optional<Basis> to = Parts.needCode(fields, "to", Basis.class);
        BigDecimal factor = above(fields, "factor");
        String source = fields.text("source");
        return to.map(basis -> new Factor(basis, factor, source));
    }

    static Optional<Range> storage(Fields fields) {
        Optional<Range> range = range(fields);
        range.filter(some -> some.unit() != Unit.CELSIUS)
                .ifPresent(some -> fields.complain(
                        "unit", "expected °C, found " + some.unit().symbol()));
        return range;
    }

    private static Optional<Range> range(Fields fields) {
        Optional<BigDecimal> low = Parts.needDecimal(fields, "low");
        Optional<BigDecimal> high = Parts.needDecimal(fields, "high");
        Optional<Unit> unit = Parts.needUnit(fields, "unit");
        Optional<Range> range = low.flatMap(from -> high.flatMap(to -> unit.map(of -> new Range(from, to, of))));
        range.filter(some -> some.low().compareTo(some.high()) > 0)
                .ifPresent(some -> fields.complain(
                        "low",
                        "is " + Decimals.text(some.low()) + ", above high, which is " + Decimals.text(some.high())));
        return range;
    }

    static List<PreCheck> preChecks(Fields method) {
        Set<String> names = new HashSet<>();
        return method.children("pre_checks").stream()
                .flatMap(fields -> preCheck(fields, names).stream())
                .toList();
    }

    private static Optional<PreCheck> preCheck(Fields fields, Set<String> names) {
        String name = fields.text("name");
        if (!name.isBlank() && !names.add(name)) {
            fields.complain("name", "two pre-checks are called '" + name + "'");
        }
        return range(fields).map(range -> new PreCheck(name, range));
    }

    static List<Step> steps(Fields method) {
        return method.children("steps").stream().map(MethodLists::step).collect(Collectors.toList());
    }

    private static Step step(Fields fields) {
        return new Step(
                fields.text("text"),
                fields.optionalChild("quantity").flatMap(MethodLists::positiveQuantity),
                Parts.seconds(fields, "lasts_s"),
                fields.optionalText("caution"));
    }

    static Optional<Quantity> positiveQuantity(Fields fields) {
        Optional<Quantity> quantity = Parts.quantity(fields);
        quantity.filter(some -> some.value().signum() <= 0)
                .ifPresent(some ->
                        fields.complain("value", "expected a number above 0, found " + Decimals.text(some.value())));
        return quantity;
    }

    static List<String> texts(Fields fields, String name) {
        List<String> texts = fields.texts(name);
        if (texts.stream().anyMatch(String::isBlank)) {
            fields.complain(name, "holds a blank text");
        }
        return texts;
    }

    private static BigDecimal above(Fields fields, String name) {
        BigDecimal value = Decimals.plain(fields.decimal(name));
        if (fields.has(name) && value.signum() <= 0) {
            fields.complain(name, "expected a number above 0, found " + Decimals.text(value));
        }
        return value;
    }
}

package wickbench.reading;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.json.Fields;
import wickbench.api.method.Format;
import wickbench.api.method.Method.Amounts;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Method.Limit;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;

/** What must fit together in a method. */
final class MethodChecks {
    private final Fields fields;

    MethodChecks(Fields fields) {
        this.fields = fields;
    }

    void fit(Optional<Route> route, Optional<Limit> limit, Optional<Amounts> amounts) {
        route.ifPresent(known -> {
            limit.ifPresent(some -> limitFits(known, some));
            amounts.ifPresent(some -> amountsFit(known, some));
            limit.ifPresent(some -> amounts.ifPresent(taken -> liquidStated(known, some, taken)));
        });
    }

    /** A positive cannot start below what is detected, nor a hook below what a positive starts from. */
    void order(Optional<Limit> limit, Optional<BigDecimal> positiveFrom, Optional<BigDecimal> hookOnset) {
        Optional<BigDecimal> least = limit.map(some -> some.value().value());
        notBelow("hook_onset", hookOnset, "positive_from", positiveFrom);
        notBelow("hook_onset", hookOnset, "limit", least);
    }

    void lines(Optional<Format> format, Optional<BigDecimal> hookOnset, Optional<Seen> faintTest) {
        faintTest
                .filter(seen -> seen != Seen.SEEN && seen != Seen.NOT_SEEN)
                .ifPresent(seen -> fields.complain("faint_test", "expected seen or not-seen, found " + seen.code()));
        format.ifPresent(known -> {
            if (known.sandwich() && faintTest.isPresent()) {
                fields.complain("faint_test", "on a " + known.code() + " strip any intensity is seen; leave it out");
            }
            if (!known.sandwich() && hookOnset.isPresent()) {
                fields.complain("hook_onset", "a competitive strip has no hook effect; leave it out");
            }
        });
    }

    private void limitFits(Route route, Limit limit) {
        Set<Unit.Kind> kinds = limit.holds() == Holds.IN_EXTRACT ? inExtract(route) : inSample(route);
        Unit unit = limit.value().unit();
        if (!kinds.contains(unit.kind())) {
            fields.complain(
                    "limit.unit",
                    "a limit " + limit.holds().code() + " by " + route.code() + " is given in " + symbols(kinds)
                            + ", not in " + unit.symbol());
        }
    }

    private static Set<Unit.Kind> inExtract(Route route) {
        return route.swab() ? Set.of(Unit.Kind.CONCENTRATION, Unit.Kind.PER_SWAB) : Set.of(Unit.Kind.CONCENTRATION);
    }

    private static Set<Unit.Kind> inSample(Route route) {
        return switch (route) {
            case RINSE -> Set.of(Unit.Kind.CONCENTRATION);
            case SWAB_DRY, SWAB_WET -> Set.of(Unit.Kind.AREA_DENSITY, Unit.Kind.PER_SWAB);
            case FOOD_SOLID -> Set.of(Unit.Kind.MASS_FRACTION);
            case FOOD_LIQUID -> Set.of(Unit.Kind.MASS_FRACTION, Unit.Kind.CONCENTRATION);
        };
    }

    private void amountsFit(Route route, Amounts amounts) {
        Unit asked = route.swab() ? Unit.CM2 : route == Route.FOOD_SOLID ? Unit.G : Unit.ML;
        isIn("sample", amounts.sample(), asked, "a " + route.code() + " sample");
        amounts.liquid().ifPresent(liquid -> isIn("liquid", liquid, Unit.ML, "the liquid"));
    }

    private void isIn(String name, Quantity quantity, Unit asked, String what) {
        if (quantity.unit() != asked) {
            fields.complain(
                    "amounts." + name + ".unit",
                    what + " is given in " + asked.symbol() + ", not in "
                            + quantity.unit().symbol());
        }
    }

    /** Without the liquid's volume a concentration says nothing of what was extracted into it. */
    private void liquidStated(Route route, Limit limit, Amounts amounts) {
        boolean extracted = route.swab() || route == Route.FOOD_SOLID;
        boolean concentration = limit.value().unit().kind() == Unit.Kind.CONCENTRATION;
        if (extracted
                && concentration
                && limit.holds() == Holds.IN_EXTRACT
                && amounts.liquid().isEmpty()) {
            fields.complain(
                    "amounts.liquid",
                    "is missing; a limit in-extract by " + route.code() + " needs the volume of liquid in mL");
        }
    }

    private void notBelow(String name, Optional<BigDecimal> value, String other, Optional<BigDecimal> least) {
        value.ifPresent(some -> least.filter(floor -> some.compareTo(floor) < 0)
                .ifPresent(floor -> fields.complain(
                        name,
                        "is " + Decimals.text(some) + ", below " + other + ", which is " + Decimals.text(floor))));
    }

    private static String symbols(Set<Unit.Kind> kinds) {
        return Arrays.stream(Unit.values())
                .filter(unit -> kinds.contains(unit.kind()))
                .map(Unit::symbol)
                .collect(Collectors.joining(", "));
    }
}

package wickbench.reading;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Unit;
import wickbench.api.reading.Sample;

/**
 * How a number of the method becomes one of the sample: times {@code times}, over {@code over}.
 *
 * @param unit what comes out
 */
record Scale(BigDecimal times, BigDecimal over, Unit unit) {
    private static final BigDecimal HUNDRED_CM2 = BigDecimal.valueOf(100);
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    static Scale of(Method method, Sample sample) {
        Unit unit = method.limit().value().unit();
        Scale plain = new Scale(BigDecimal.ONE, BigDecimal.ONE, unit);
        Scale prepared = switch (unit.kind()) {
            case PER_SWAB -> plain.perArea(area(method, sample));
            case AREA_DENSITY -> plain.times(method.amounts().sample().value()).over(area(method, sample));
            case CONCENTRATION -> inExtract(method) ? plain.prepared(method, sample) : plain;
            default -> plain;
        };
        return prepared.times(sample.dilution());
    }

    BigDecimal apply(BigDecimal value) {
        return Decimals.divide(value.multiply(times), over);
    }

    private Scale prepared(Method method, Sample sample) {
        BigDecimal taken = method.amounts().sample().value();
        if (method.route().swab()) {
            return onSwab(extract(method)).perArea(area(method, sample));
        }
        if (method.route() == Route.FOOD_SOLID) {
            return times(extract(method)).over(taken).as(perMass(unit));
        }
        return times(taken.add(liquid(method).orElse(BigDecimal.ZERO))).over(taken);
    }

    /** Returns the liquid that the allergen was extracted into; none would make the limit nothing. */
    private static BigDecimal extract(Method method) {
        return liquid(method)
                .orElseThrow(() -> new IllegalArgumentException(
                        "method " + method.ref() + " has a limit in-extract and no volume of liquid"));
    }

    private static Optional<BigDecimal> liquid(Method method) {
        return method.amounts().liquid().map(Quantity::value);
    }

    /** Turns a concentration into the µg that the swab carried into the liquid, in mL. */
    private Scale onSwab(BigDecimal liquid) {
        Scale micrograms = perMass(unit) == Unit.UG_PER_KG ? over(THOUSAND) : this;
        return micrograms.times(liquid).as(Unit.UG_PER_SWAB);
    }

    private Scale perArea(BigDecimal area) {
        return times(HUNDRED_CM2).over(area).as(Unit.UG_PER_100_CM2);
    }

    private Scale times(BigDecimal factor) {
        return new Scale(times.multiply(factor), over, unit);
    }

    private Scale over(BigDecimal divisor) {
        return new Scale(times, over.multiply(divisor), unit);
    }

    private Scale as(Unit other) {
        return new Scale(times, over, other);
    }

    /** Returns what a concentration is called when a millilitre of it comes from a gram: mg/L times mL/g is mg/kg. */
    private static Unit perMass(Unit concentration) {
        return concentration == Unit.MG_PER_L || concentration == Unit.UG_PER_ML ? Unit.MG_PER_KG : Unit.UG_PER_KG;
    }

    private static BigDecimal area(Method method, Sample sample) {
        return sample.area().orElse(method.amounts().sample().value());
    }

    private static boolean inExtract(Method method) {
        return method.limit().holds() == Holds.IN_EXTRACT;
    }
}

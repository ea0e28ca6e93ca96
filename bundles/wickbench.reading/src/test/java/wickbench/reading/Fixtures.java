package wickbench.reading;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Amounts;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Method.Limit;
import wickbench.api.method.Method.Target;
import wickbench.api.method.Method.Timing;
import wickbench.api.method.MethodId;
import wickbench.api.method.MethodRef;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.person.PersonId;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Reading.Origin;
import wickbench.api.reading.Reason;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;

/**
 * Plain methods and readings of an invented plant; tests change what they are about.
 *
 * <p>Common practice, no source: develop 5 min and read within the next minute, warm-up 20 min, shake 60 s, extract used within
 * 3 h, 2 g in 20 mL.
 */
final class Fixtures {
    static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    static final Duration DEVELOP = Duration.ofSeconds(300);
    static final Duration WINDOW = Duration.ofSeconds(60);
    static final PersonId OPERATOR = new PersonId("op-03");
    static final PersonId OTHER = new PersonId("op-07");
    static final LotId LOT = new LotId("A17");

    private Fixtures() {}

    static Method method(Format format) {
        return new Method(
                new MethodRef(new MethodId("hazelnut-food"), 3),
                "Hazelnut in food",
                "Hazel kit",
                new Target("hazelnut", Basis.TOTAL_PROTEIN, List.of(), List.of()),
                format,
                marks(format),
                Route.FOOD_SOLID,
                new Limit(Quantity.of("1", Unit.MG_PER_L), Holds.IN_EXTRACT, Optional.of(new BigDecimal("0.95"))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                timing(),
                new Amounts(Quantity.of("2", Unit.G), Optional.of(Quantity.of("20", Unit.ML))),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }

    static Map<LineRole, String> marks(Format format) {
        Map<LineRole, String> marks = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> marks.put(role, role.name().substring(0, 1)));
        return marks;
    }

    static Timing timing() {
        return new Timing(
                DEVELOP,
                WINDOW,
                Optional.of(Duration.ofMinutes(20)),
                Optional.of(Duration.ofSeconds(60)),
                Optional.of(Duration.ofHours(3)));
    }

    /** Returns a strip with the control (and hook) seen. */
    static Strip strip(Format format, Seen test) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> lines.put(role, Seen.SEEN));
        lines.put(LineRole.TEST, test);
        return new Strip(format, lines);
    }

    static Strip negative(Format format) {
        return strip(format, format.sandwich() ? Seen.NOT_SEEN : Seen.SEEN);
    }

    static Strip positive(Format format) {
        return strip(format, format.sandwich() ? Seen.SEEN : Seen.NOT_SEEN);
    }

    /** Returns a sample after cleaning with nothing special about it. */
    static Sample sample() {
        return sample(Optional.of(Reason.AFTER_CLEANING), BigDecimal.ONE);
    }

    static Sample sample(Optional<Reason> reason, BigDecimal dilution) {
        return new Sample(
                "S-001",
                "filler nozzle",
                Optional.of("L1"),
                Optional.empty(),
                reason,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                dilution,
                Optional.empty());
    }

    /** Returns times against which the method of these fixtures has nothing to say. */
    static Times times() {
        return new Times(
                Optional.of(START.minusSeconds(1500)),
                Optional.of(START.minusSeconds(600)),
                Optional.of(Duration.ofSeconds(60)),
                Optional.of(START),
                Optional.of(START.plusSeconds(330)));
    }

    static Reading reading(Strip strip) {
        return reading(sample(), times(), strip);
    }

    static Reading reading(Sample sample, Times times, Strip strip) {
        return new Reading(
                sample,
                new MethodId("hazelnut-food"),
                Route.FOOD_SOLID,
                LOT,
                OPERATOR,
                Optional.empty(),
                times,
                strip,
                Optional.empty(),
                Map.of(),
                new Origin.Bench());
    }
}

package wickbench.ledger.services;

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
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.reading.Judgement;
import wickbench.reading.Surroundings;

/** Readings of an invented plant, judged by the core; times and amounts are common practice, no source. */
final class Strips {
    static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    static final PersonId OPERATOR = new PersonId("op-03");

    private Strips() {}

    /** What a test varies of a reading. */
    record Plain(
            String sample,
            String place,
            Optional<String> line,
            Optional<String> batch,
            String method,
            String lot,
            PersonId operator,
            Optional<Instant> started,
            Seen test,
            Seen control) {

        static Plain negative(String sample) {
            return new Plain(
                    sample,
                    "filler nozzle",
                    Optional.of("L1"),
                    Optional.empty(),
                    "hazelnut-rinse",
                    "A17",
                    OPERATOR,
                    Optional.of(START),
                    Seen.NOT_SEEN,
                    Seen.SEEN);
        }

        Plain seen(Seen control, Seen test) {
            return new Plain(sample, place, line, batch, method, lot, operator, started, test, control);
        }

        Plain at(Instant started) {
            return new Plain(sample, place, line, batch, method, lot, operator, Optional.of(started), test, control);
        }

        RecordedReading judged() {
            Method by = Strips.method(method);
            Reading reading = Strips.reading(this);
            return new RecordedReading(reading, by, List.of(), Judgement.judge(by, reading, Surroundings.none()));
        }
    }

    static Method method(String id) {
        return new Method(
                new MethodRef(new MethodId(id), 1),
                "Rinse water, " + id,
                "Demonstration kit, three lines",
                Optional.empty(),
                new Target(id.substring(0, id.indexOf('-')), Basis.TOTAL_PROTEIN, List.of(), List.of()),
                Format.SANDWICH_HOOK,
                Map.of(LineRole.CONTROL, "C", LineRole.HOOK, "H", LineRole.TEST, "T"),
                Route.RINSE,
                new Limit(Quantity.of("0.3", Unit.UG_PER_ML), Holds.IN_SAMPLE, Optional.of(new BigDecimal("0.95"))),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new Timing(
                        Duration.ofMinutes(5),
                        Duration.ofMinutes(1),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                new Amounts(Quantity.of("0.25", Unit.ML), Optional.empty()),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }

    static Reading reading(Plain plain) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        lines.put(LineRole.CONTROL, plain.control());
        lines.put(LineRole.HOOK, Seen.SEEN);
        lines.put(LineRole.TEST, plain.test());
        return new Reading(
                sample(plain),
                new MethodId(plain.method()),
                Route.RINSE,
                new LotId(plain.lot()),
                plain.operator(),
                Optional.empty(),
                new Times(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        plain.started(),
                        plain.started().map(start -> start.plusSeconds(330))),
                new Strip(Format.SANDWICH_HOOK, lines),
                Optional.empty(),
                Map.of(),
                new Origin.Sheet("morning.csv", 2));
    }

    private static Sample sample(Plain plain) {
        return new Sample(
                plain.sample(),
                plain.place(),
                plain.line(),
                plain.batch(),
                Optional.of(Reason.AFTER_CLEANING),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.empty());
    }
}

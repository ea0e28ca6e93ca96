package wickbench.benchmarks;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import wickbench.api.journal.Draft;
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
import wickbench.reading.RecordedReadingJson;
import wickbench.reading.Surroundings;

/** Readings of an invented plant, judged by the core: 40 places, 4 methods, one in 50 positive. */
final class Readings {
    private static final Instant START = Instant.parse("2026-01-05T06:00:00Z");
    private static final PersonId WRITER = new PersonId("op-01");
    private static final int PLACES = 40;
    private static final int LINES = 4;
    private static final int OPERATORS = 12;
    private static final int LOTS = 30;
    private static final int ONE_POSITIVE_IN = 50;
    private static final long SECONDS_BETWEEN = 37;
    private static final List<Method> METHODS =
            List.of(method("hazelnut-rinse"), method("milk-rinse"), method("egg-rinse"), method("sesame-rinse"));

    private Readings() {}

    static Draft draft(RandomGenerator chance, int number) {
        return new Draft(
                Draft.randomId(chance),
                WRITER,
                RecordedReading.KIND,
                RecordedReading.VERSION,
                RecordedReadingJson.write(recorded(number)));
    }

    static String place(int number) {
        return "filler nozzle " + number % PLACES;
    }

    private static RecordedReading recorded(int number) {
        Method method = METHODS.get(number % METHODS.size());
        Reading reading = reading(method, number);
        return new RecordedReading(reading, method, List.of(), Judgement.judge(method, reading, Surroundings.none()));
    }

    private static Reading reading(Method method, int number) {
        Instant started = START.plusSeconds(number * SECONDS_BETWEEN);
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        lines.put(LineRole.CONTROL, Seen.SEEN);
        lines.put(LineRole.HOOK, Seen.SEEN);
        lines.put(LineRole.TEST, number % ONE_POSITIVE_IN == 0 ? Seen.SEEN : Seen.NOT_SEEN);
        return new Reading(
                sample(number),
                method.ref().id(),
                Route.RINSE,
                new LotId("A" + number / 7 % LOTS),
                new PersonId("op-" + number / 3 % OPERATORS),
                Optional.empty(),
                new Times(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(started),
                        Optional.of(started.plusSeconds(330))),
                new Strip(Format.SANDWICH_HOOK, lines),
                Optional.empty(),
                Map.of(),
                new Origin.Sheet("morning.csv", 2 + number % 90));
    }

    private static Sample sample(int number) {
        return new Sample(
                "S" + number,
                place(number),
                Optional.of("L" + number % LINES),
                Optional.of("B" + number / 100),
                Optional.of(Reason.AFTER_CLEANING),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.empty());
    }

    private static Method method(String id) {
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
}

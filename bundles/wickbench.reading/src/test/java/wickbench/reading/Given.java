package wickbench.reading;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import wickbench.api.gate.Answer;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Amounts;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Method.Limit;
import wickbench.api.method.Method.PreCheck;
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
import wickbench.api.reading.Reading.SecondReading;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Sample;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Times;
import wickbench.api.reading.Verdict;
import wickbench.api.reading.Visual;

/**
 * A method and a reading of an invented plant with nothing wrong about them; a test changes what it is about.
 *
 * <p>Common practice, no source: develop 5 min and read within the next minute, warm-up 20 min, shake 60 s, extract used within
 * 3 h, 2 g in 20 mL.
 */
final class Given {
    static final Instant START = Instant.parse("2026-03-01T08:00:00Z");
    static final PersonId OPERATOR = new PersonId("op-03");
    static final PersonId OTHER = new PersonId("op-07");

    String methodId = "hazelnut-food";
    Format format;
    Route route = Route.FOOD_SOLID;
    Quantity limit = Quantity.of("1", Unit.MG_PER_L);
    Holds holds = Holds.IN_EXTRACT;
    Optional<BigDecimal> probability = Optional.of(new BigDecimal("0.95"));
    Optional<BigDecimal> positiveFrom = Optional.empty();
    Optional<BigDecimal> hookOnset = Optional.empty();
    Optional<Seen> faintTest = Optional.empty();
    Timing timing = new Timing(
            Duration.ofSeconds(300),
            Duration.ofSeconds(60),
            Optional.of(Duration.ofMinutes(20)),
            Optional.of(Duration.ofSeconds(60)),
            Optional.of(Duration.ofHours(3)));
    Quantity taken = Quantity.of("2", Unit.G);
    Optional<Quantity> liquid = Optional.of(Quantity.of("20", Unit.ML));
    List<PreCheck> preChecks = List.of();

    String code = "S-001";
    String lot = "A17";
    Strip strip;
    Optional<Reason> reason = Optional.of(Reason.AFTER_CLEANING);
    Optional<Visual> visual = Optional.empty();
    Optional<BigDecimal> area = Optional.empty();
    BigDecimal dilution = BigDecimal.ONE;
    Optional<RunControl> control = Optional.empty();
    Optional<Instant> outOfFridge = Optional.of(START.minusSeconds(1500));
    Optional<Instant> extracted = Optional.of(START.minusSeconds(600));
    Optional<Duration> shaken = Optional.of(Duration.ofSeconds(60));
    Optional<Instant> started = Optional.of(START);
    Optional<Instant> read = Optional.of(START.plusSeconds(330));
    Optional<PersonId> observer = Optional.empty();
    Optional<Strip> second = Optional.empty();
    Map<String, BigDecimal> measured = Map.of();
    List<Answer> answers = List.of();
    boolean controlFailed;

    Given(Format format) {
        this.format = format;
        strip = negative(format);
    }

    Given with(Consumer<Given> change) {
        change.accept(this);
        return this;
    }

    Verdict judge() {
        return Judgement.judge(method(), reading(), new Surroundings(answers, controlFailed));
    }

    RunJudgement.Unjudged unjudged() {
        return new RunJudgement.Unjudged(method(), reading(), answers);
    }

    Method method() {
        return new Method(
                new MethodRef(new MethodId(methodId), 3),
                "Hazelnut in food",
                "Hazel kit",
                Optional.empty(),
                new Target("hazelnut", Basis.TOTAL_PROTEIN, List.of(), List.of()),
                format,
                marks(),
                route,
                new Limit(limit, holds, probability),
                positiveFrom,
                hookOnset,
                faintTest,
                timing,
                new Amounts(taken, liquid),
                Optional.empty(),
                preChecks,
                List.of(),
                List.of());
    }

    Reading reading() {
        return new Reading(
                sample(),
                new MethodId(methodId),
                route,
                new LotId(lot),
                OPERATOR,
                observer,
                new Times(outOfFridge, extracted, shaken, started, read),
                strip,
                second.map(seen -> new SecondReading(OTHER, seen)),
                measured,
                new Origin.Bench());
    }

    Sample sample() {
        return new Sample(
                code,
                "filler nozzle",
                Optional.of("L1"),
                Optional.empty(),
                reason,
                Optional.empty(),
                visual,
                area,
                dilution,
                control);
    }

    private Map<LineRole, String> marks() {
        Map<LineRole, String> marks = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> marks.put(role, role.name().substring(0, 1)));
        return marks;
    }

    /** Returns a strip on which every line but the test line is seen. */
    static Strip strip(Format format, Seen test) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> lines.put(role, Seen.SEEN));
        lines.put(LineRole.TEST, test);
        return new Strip(format, lines);
    }

    static Strip with(Strip strip, LineRole role, Seen seen) {
        Map<LineRole, Seen> lines = new EnumMap<>(strip.lines());
        lines.put(role, seen);
        return new Strip(strip.format(), lines);
    }

    static Strip negative(Format format) {
        return strip(format, format.sandwich() ? Seen.NOT_SEEN : Seen.SEEN);
    }

    static Strip positive(Format format) {
        return strip(format, format.sandwich() ? Seen.SEEN : Seen.NOT_SEEN);
    }

    static Strip aboveRange() {
        return with(negative(Format.SANDWICH_HOOK), LineRole.HOOK, Seen.NOT_SEEN);
    }
}

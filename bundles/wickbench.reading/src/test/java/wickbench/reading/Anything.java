package wickbench.reading;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import wickbench.api.gate.Answer;
import wickbench.api.lot.LotId;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Amounts;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Factor;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Method.Limit;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Method.Step;
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
import wickbench.api.reading.Visual;

/** Any good method and any reading of it, drawn by a seeded generator. */
final class Anything {
    private static final List<String> WORDS =
            List.of("Takt", "filler 3", "\"quoted\"", "naïve µ²", "line\nbreak", "crème \u2028", "\uD83E\uDD5C", "x");
    // weighted so that most strips are valid, which is where the laws have something to say
    private static final List<Seen> MOSTLY_THERE =
            List.of(Seen.SEEN, Seen.SEEN, Seen.SEEN, Seen.SEEN, Seen.SEEN, Seen.FAINT, Seen.NOT_SEEN, Seen.DAMAGED);
    private static final List<Seen> EVENLY = List.of(
            Seen.SEEN, Seen.SEEN, Seen.FAINT, Seen.NOT_SEEN, Seen.NOT_SEEN, Seen.NOT_SEEN, Seen.SEEN, Seen.DAMAGED);

    private final Random random;

    Anything(long seed) {
        random = new Random(seed);
    }

    Method method() {
        Format format = one(Format.class);
        Route route = one(Route.class);
        Holds holds = one(Holds.class);
        Unit unit = oneOf(units(route, holds));
        BigDecimal value = above();
        boolean competitive = format == Format.COMPETITIVE;
        return new Method(
                new MethodRef(new MethodId("m-" + random.nextInt(1000)), 1 + random.nextInt(99)),
                word(),
                word(),
                maybe(this::word),
                new Target(word(), one(Basis.class), some(this::factor), some(this::word)),
                format,
                marks(format),
                route,
                new Limit(new Quantity(value, unit), holds, maybe(() -> new BigDecimal("0.95"))),
                maybe(() -> value),
                maybe(() -> Decimals.plain(value.multiply(BigDecimal.TEN))).filter(onset -> !competitive),
                maybe(() -> oneOf(List.of(Seen.SEEN, Seen.NOT_SEEN))).filter(call -> competitive),
                timing(),
                new Amounts(new Quantity(above(), taken(route)), Optional.of(new Quantity(above(), Unit.ML))),
                maybe(() -> new Range(new BigDecimal("-20.5"), new BigDecimal(8), Unit.CELSIUS)),
                random.nextBoolean() ? List.of() : List.of(preCheck("rinse pH"), preCheck("sanitiser")),
                some(this::step),
                some(this::word));
    }

    static List<Unit> units(Route route, Holds holds) {
        List<Unit> concentrations = List.of(Unit.MG_PER_L, Unit.UG_PER_ML, Unit.UG_PER_L, Unit.NG_PER_ML);
        if (holds == Holds.IN_EXTRACT || route == Route.RINSE) {
            return concentrations;
        }
        return route.swab() ? List.of(Unit.UG_PER_100_CM2, Unit.UG_PER_SWAB) : List.of(Unit.MG_PER_KG, Unit.UG_PER_KG);
    }

    private static Unit taken(Route route) {
        return route.swab() ? Unit.CM2 : route == Route.FOOD_SOLID ? Unit.G : Unit.ML;
    }

    private Timing timing() {
        return new Timing(
                span().plusMillis(1), span().plusMillis(1), maybe(this::span), maybe(this::span), maybe(this::span));
    }

    private Factor factor() {
        return new Factor(one(Basis.class), above(), word());
    }

    private PreCheck preCheck(String name) {
        BigDecimal low = above();
        return new PreCheck(name, new Range(low, Decimals.plain(low.add(above())), one(Unit.class)));
    }

    private Step step() {
        return new Step(
                word(), maybe(() -> new Quantity(above(), one(Unit.class))), maybe(this::span), maybe(this::word));
    }

    Reading reading(Method method) {
        return new Reading(
                sample(),
                method.ref().id(),
                method.route(),
                new LotId("L" + random.nextInt(99)),
                new PersonId("op-" + random.nextInt(9)),
                maybe(() -> new PersonId("ob-" + random.nextInt(9))),
                random.nextInt(4) == 0 ? anyTimes() : timesOf(method.timing()),
                strip(method.format()),
                maybe(() -> new SecondReading(new PersonId("op-x"), strip(method.format())))
                        .filter(second -> random.nextBoolean()),
                random.nextBoolean() ? Map.of() : Map.of("rinse pH", above(), word(), above()),
                random.nextBoolean() ? new Origin.Bench() : new Origin.Sheet(word(), 1 + random.nextInt(999)));
    }

    private Times anyTimes() {
        return new Times(
                maybe(this::instant),
                maybe(this::instant),
                maybe(this::span),
                maybe(this::instant),
                maybe(this::instant));
    }

    /** Returns times against which the method has nothing to say. */
    private Times timesOf(Timing timing) {
        Instant start = instant();
        return new Times(
                timing.warmUp().map(start::minus),
                timing.extractHold().map(start::minus),
                timing.shake(),
                Optional.of(start),
                Optional.of(start.plus(timing.develop())
                        .plusMillis(random.nextLong(timing.window().toMillis() + 1))));
    }

    private Sample sample() {
        return new Sample(
                word(),
                oneOf(List.of("", "nozzle")),
                maybe(this::word),
                maybe(this::word),
                maybe(() -> one(Reason.class)),
                maybe(this::word),
                maybe(() -> one(Visual.class)),
                maybe(this::above),
                Decimals.plain(BigDecimal.ONE.add(maybe(this::above).orElse(BigDecimal.ZERO))),
                maybe(() -> one(RunControl.class)));
    }

    Strip strip(Format format) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> lines.put(role, oneOf(role == LineRole.CONTROL ? MOSTLY_THERE : EVENLY)));
        return new Strip(format, lines);
    }

    List<Answer> answers() {
        return some(() -> switch (random.nextInt(3)) {
            case 0 -> new Answer.NotChecked(word(), random.nextBoolean());
            case 1 -> new Answer.Cleared(word(), facts());
            default ->
                new Answer.Refused(
                        word(), facts(), some(() -> new Answer.Reason("lot." + random.nextInt(9), word(), "")));
        });
    }

    private Map<String, String> facts() {
        Map<String, String> facts = new HashMap<>();
        some(this::word).forEach(word -> facts.put(word, word()));
        return facts;
    }

    private Map<LineRole, String> marks(Format format) {
        Map<LineRole, String> marks = new EnumMap<>(LineRole.class);
        format.lines().forEach(role -> marks.put(role, word()));
        return marks;
    }

    /** Returns a decimal above zero of at most seven digits, in plain form. */
    BigDecimal above() {
        return Decimals.plain(BigDecimal.valueOf(1 + random.nextInt(9_999_999), random.nextInt(7)));
    }

    Duration span() {
        return Duration.ofMillis(random.nextInt(20_000_000));
    }

    Instant instant() {
        return Given.START.plusMillis(random.nextInt());
    }

    String word() {
        return oneOf(WORDS);
    }

    <E extends Enum<E>> E one(Class<E> type) {
        return oneOf(List.of(type.getEnumConstants()));
    }

    <T> T oneOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    <T> Optional<T> maybe(Supplier<T> draw) {
        return random.nextBoolean() ? Optional.of(draw.get()) : Optional.empty();
    }

    <T> List<T> some(Supplier<T> draw) {
        return IntStream.range(0, random.nextInt(4)).mapToObj(i -> draw.get()).toList();
    }
}

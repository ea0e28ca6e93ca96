package wickbench.bench.evidence;

import java.math.BigDecimal;
import java.util.Optional;
import wickbench.api.json.Json;
import wickbench.api.method.Method;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Factor;
import wickbench.api.method.Unit;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Sample;
import wickbench.api.words.Coded;
import wickbench.figures.sums.Answer;
import wickbench.figures.sums.KeptSum;
import wickbench.reading.Levels;

/**
 * Whether a method can tell that an action level is reached.
 *
 * <p>It can only where its limit in the sample does not lie above what the level comes to there. A food is held against the action
 * level itself; a swab or rinse only against what carry-over allows at the point, and there the first portion decides.
 *
 * @param tells the answer
 * @param words the answer with its numbers, in one sentence
 */
public record Reach(Tells tells, String words) {

    /** Whether it can. */
    public enum Tells implements Coded {
        CAN_TELL,
        CANNOT_TELL,
        NOT_COMPARABLE
    }

    /** What the sample may hold, in a unit of the sample. */
    private record Allowed(BigDecimal value, Unit unit) {}

    /** Returns the answer of a kept action level or carry-over; empty for every other sum. */
    public static Optional<Reach> of(Method method, KeptSum kept) {
        return switch (kept.sum()) {
            case "action-level" ->
                Optional.of(
                        method.route().food()
                                ? against(method, number(kept.figures(), "mgPerKg"), Unit.MG_PER_KG)
                                : not("food-only"));
            case "carry-over" ->
                Optional.of(method.route().food() ? not("swab-or-rinse-only") : carried(method, kept.figures()));
            default -> Optional.empty();
        };
    }

    private static Reach carried(Method method, Json.Obj figures) {
        boolean swab = method.route().swab();
        Optional<Json.Obj> limit = figures.get(swab ? "swabLimit" : "rinseLimit")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast);
        if (limit.isEmpty()) {
            return not("no-level");
        }
        return limit.get().get("firstOff").isPresent()
                ? against(method, number(limit.get(), "firstOff"), swab ? Unit.UG_PER_100_CM2 : Unit.MG_PER_L)
                : not("no-first-off");
    }

    private static Reach against(Method method, Optional<BigDecimal> allowed, Unit unit) {
        Optional<BigDecimal> factor = toProtein(method);
        if (factor.isEmpty()) {
            return not("basis");
        }
        Level level = Levels.of(method, plain(), Outcome.NEGATIVE).orElseThrow();
        if (level.unit().kind() != unit.kind() || allowed.isEmpty()) {
            return not("unit");
        }
        BigDecimal least =
                level.unit().convert(level.high().orElseThrow(), unit).multiply(factor.get());
        Allowed most = new Allowed(allowed.get(), unit);
        return least.compareTo(most.value()) > 0
                ? new Reach(Tells.CANNOT_TELL, words("cannot", least, most))
                : new Reach(Tells.CAN_TELL, words("can", least, most));
    }

    private static String words(String key, BigDecimal least, Allowed most) {
        return EvidenceWords.get(
                "reach." + key,
                Answer.forPeople(least),
                Answer.forPeople(most.value()),
                most.unit().symbol());
    }

    private static Reach not(String why) {
        return new Reach(Tells.NOT_COMPARABLE, EvidenceWords.get("reach.not." + why));
    }

    /** Action levels are in total protein. */
    private static Optional<BigDecimal> toProtein(Method method) {
        return method.target().basis() == Basis.TOTAL_PROTEIN
                ? Optional.of(BigDecimal.ONE)
                : method.target().factors().stream()
                        .filter(factor -> factor.to() == Basis.TOTAL_PROTEIN)
                        .map(Factor::factor)
                        .findFirst();
    }

    /** A sample as the method takes it, not thinned. */
    private static Sample plain() {
        return new Sample(
                "-",
                "-",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ONE,
                Optional.empty());
    }

    private static Optional<BigDecimal> number(Json.Obj of, String name) {
        return of.get(name).filter(Json.Num.class::isInstance).map(number -> ((Json.Num) number).value());
    }
}

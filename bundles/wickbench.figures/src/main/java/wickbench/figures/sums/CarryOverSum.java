package wickbench.figures.sums;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wickbench.api.chart.Chart;
import wickbench.api.json.Json;
import wickbench.api.words.Decimals;
import wickbench.figures.level.ActionLevel;
import wickbench.figures.level.CarryOver;

/** From a swab or a rinse to the next product, or back from its action level. */
final class CarryOverSum {
    private CarryOverSum() {}

    static Sum sum() {
        return Sum.of(
                "carry-over",
                Topic.LEVELS,
                List.of(
                        Input.decimal("swab").optional().like("2"),
                        Input.decimal("area").optional().like("5"),
                        Input.decimal("recovery").usual("1"),
                        Input.decimal("transfer").usual("1"),
                        Input.decimal("rinse").optional(),
                        Input.decimal("hold-up").optional(),
                        Input.decimal("batch").like("200"),
                        Input.decimal("first-off").optional().like("5"),
                        Input.decimal("action-level").optional().like("4")),
                CarryOverSum::answer);
    }

    private static Answer answer(Given given) {
        boolean swab = given.has("area");
        check(given, swab);
        BigDecimal batch = given.decimal("batch");
        Optional<BigDecimal> firstOff = given.optionalDecimal("first-off");
        CarryOver.Masses masses = new CarryOver.Masses(batch, firstOff.orElse(batch));
        Optional<CarryOver> found = swab
                ? given.optionalDecimal("swab").map(result -> CarryOver.ofSwab(result, surface(given), masses))
                : given.optionalDecimal("rinse")
                        .map(result -> CarryOver.ofRinse(result, given.decimal("hold-up"), masses));
        Optional<ActionLevel> action = given.optionalDecimal("action-level").map(ActionLevel::new);
        Answer forth = found.map(over -> forth(over, firstOff.isPresent())).orElseGet(Answer::of);
        Answer answer = action.map(level -> back(forth, given, swab, level, masses))
                .orElse(forth)
                .by(swab ? "carry-over.swab" : "carry-over.rinse")
                .minding("carry-over.first-off-decides")
                .minding(swab ? "carry-over.recovery" : "carry-over.not-comparable");
        return found.filter(over -> over.totalMg().signum() > 0)
                .map(over -> answer.plotted(() -> plot(over, masses, action)))
                .orElse(answer);
    }

    private static void check(Given given, boolean swab) {
        if (swab == given.has("hold-up")) {
            throw Wrong.of(swab ? "hold-up" : "area", "carry-over.area-or-hold-up");
        }
        if (given.has("swab") && !swab || given.has("rinse") && swab) {
            throw Wrong.of(swab ? "rinse" : "swab", "carry-over.other-sample");
        }
        if (!given.has("swab") && !given.has("rinse") && !given.has("action-level")) {
            throw Wrong.of("swab", "carry-over.nothing");
        }
    }

    private static Answer forth(CarryOver over, boolean firstOff) {
        return masses(
                        Answer.of().with("totalMg", over.totalMg()),
                        "mgPerKg",
                        over.batch(),
                        firstOff ? Optional.of(over.firstOff()) : Optional.empty())
                .inWords(
                        firstOff ? "carry-over.result" : "carry-over.result-batch",
                        Answer.forPeople(over.batch()),
                        Answer.forPeople(over.firstOff()));
    }

    private static Answer back(Answer forth, Given given, boolean swab, ActionLevel action, CarryOver.Masses masses) {
        BigDecimal ofBatch = limit(given, swab, action, masses.batchKg());
        Optional<BigDecimal> ofFirst = given.has("first-off")
                ? Optional.of(limit(given, swab, action, masses.firstOffKg()))
                : Optional.empty();
        return masses(forth, swab ? "swabLimit" : "rinseLimit", ofBatch, ofFirst)
                .inWords(
                        swab ? "carry-over.swab-limit" : "carry-over.rinse-limit",
                        Answer.forPeople(ofFirst.orElse(ofBatch)),
                        Decimals.of(action.mgPerKg().stripTrailingZeros()));
    }

    private static CarryOver.Surface surface(Given given) {
        return new CarryOver.Surface(given.decimal("area"), given.decimal("recovery"), given.decimal("transfer"));
    }

    private static BigDecimal limit(Given given, boolean swab, ActionLevel action, BigDecimal mass) {
        return swab
                ? CarryOver.swabLimit(action, surface(given), mass)
                : CarryOver.rinseLimit(action, given.decimal("hold-up"), mass);
    }

    private static Answer masses(Answer answer, String name, BigDecimal ofBatch, Optional<BigDecimal> ofFirst) {
        return answer.with(
                name,
                Json.object()
                        .with("batch", Json.Num.rounded(ofBatch))
                        .withOptional("firstOff", ofFirst.map(some -> new Json.Num(Json.Num.rounded(some)))));
    }

    private static Chart plot(CarryOver over, CarryOver.Masses masses, Optional<ActionLevel> action) {
        double total = over.totalMg().doubleValue();
        Chart chart = Plots.chart(
                Plots.logarithm("mass"),
                Plots.logarithm("mg-per-kg"),
                Plots.curveOfRatios(
                        "carry-over",
                        masses.firstOffKg().doubleValue() / 2,
                        masses.batchKg().doubleValue() * 2,
                        kg -> total / kg));
        return action.map(level -> Plots.with(
                        chart, Plots.limit("action-level", level.mgPerKg().doubleValue())))
                .orElse(chart);
    }
}

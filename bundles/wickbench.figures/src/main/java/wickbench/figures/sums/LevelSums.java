package wickbench.figures.sums;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.json.Json;
import wickbench.api.words.Decimals;
import wickbench.figures.level.ActionLevel;
import wickbench.figures.level.Conversions;
import wickbench.figures.level.Found;
import wickbench.figures.level.ReferenceDose;
import wickbench.figures.level.Standing;

/** What a result means in the food. */
final class LevelSums {
    private LevelSums() {}

    static List<Sum> all() {
        return List.of(
                Sum.of(
                        "action-level",
                        Topic.LEVELS,
                        List.of(
                                Input.decimal("dose").like("2"),
                                Input.decimal("amount").like("50")),
                        LevelSums::actionLevel),
                Sum.of("doses", Topic.LEVELS, List.of(), LevelSums::doses),
                Sum.of(
                        "standing",
                        Topic.LEVELS,
                        List.of(
                                Input.decimal("action-level").like("40"),
                                Input.choice("sample", List.of("food", "rinse", "swab"))
                                        .usual("food"),
                                Input.decimal("from").usual("0").only("sample", "food"),
                                Input.decimal("below").optional().like("5").only("sample", "food")),
                        LevelSums::standing),
                CarryOverSum.sum(),
                Sum.of(
                        "dilution",
                        Topic.LEVELS,
                        List.of(
                                Input.decimal("extract").like("0.1"),
                                Input.decimal("sample").like("1"),
                                Input.decimal("volume").like("10"),
                                Input.decimal("dilution").usual("1").like("5")),
                        LevelSums::dilution),
                Sum.of(
                        "protein",
                        Topic.LEVELS,
                        List.of(
                                Input.choice("given", List.of("protein", "food"))
                                        .usual("protein"),
                                Input.decimal("protein").like("40").only("given", "protein"),
                                Input.decimal("food").like("155").only("given", "food"),
                                Input.decimal("protein-percent").like("25.8")),
                        LevelSums::protein));
    }

    private static Answer actionLevel(Given given) {
        BigDecimal dose = given.decimal("dose");
        ActionLevel level = ActionLevel.of(dose, given.decimal("amount"));
        return Answer.of()
                .with("mgPerKg", level.mgPerKg())
                .with("oneDecimal", level.rounded(1))
                .inWords(
                        "level.result",
                        Answer.forPeople(level.mgPerKg()),
                        Decimals.of(given.decimal("amount")),
                        Decimals.of(dose))
                .by("level.action")
                .minding("level.caution")
                .plotted(() -> Plots.with(
                        Plots.chart(
                                Plots.logarithm("amount"),
                                Plots.logarithm("mg-per-kg"),
                                Plots.curveOfRatios(
                                        "action-level", 10, 1000, grams -> dose.doubleValue() * 1000 / grams)),
                        Plots.limit("this-level", level.mgPerKg().doubleValue())));
    }

    private static Answer doses(Given given) {
        return Answer.of()
                .with(
                        "doses",
                        Json.array(Stream.concat(
                                        ReferenceDose.consultation().stream(), ReferenceDose.belgianOpinion().stream())
                                .map(LevelSums::row)
                                .toList()))
                .by("level.doses")
                .minding("level.unverified")
                .minding("level.caution")
                .plotted(LevelSums::plotted);
    }

    private static Json.Obj row(ReferenceDose dose) {
        return Json.object()
                .with("allergen", dose.allergen())
                .with("name", dose.name())
                .with("mgProtein", dose.mg().<Json>map(Json.Num::new).orElse(Json.Null.NULL))
                .with("publication", dose.publication().code())
                .with("known", dose.known().name().toLowerCase(Locale.ROOT));
    }

    private static Chart plotted() {
        List<ReferenceDose> stated = ReferenceDose.consultation().stream()
                .filter(dose -> dose.mg().isPresent())
                .toList();
        return Plots.chart(
                Plots.places("none", stated.stream().map(ReferenceDose::name).toList()),
                Plots.logarithm("mg-protein"),
                Plots.inOrder(
                        "dose",
                        Series.Mark.POINTS,
                        stated.stream()
                                .mapToDouble(dose -> dose.mg().orElseThrow().doubleValue())
                                .toArray()));
    }

    private static Answer standing(Given given) {
        ActionLevel level = new ActionLevel(given.decimal("action-level"));
        Standing standing = Standing.of(found(given), level);
        String code = standing.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Answer.of()
                .with("standing", code)
                .inWords("standing." + code)
                .by("standing.formula")
                .minding("level.caution")
                .minding("standing.verified");
    }

    private static Found found(Given given) {
        if (!"food".equals(given.text("sample").orElse(""))) {
            return new Found.NotOfFood();
        }
        Optional<BigDecimal> below = given.optionalDecimal("below");
        return new Found.InRange(given.decimal("from"), below);
    }

    private static Answer dilution(Given given) {
        BigDecimal extract = given.decimal("extract");
        BigDecimal inSample = Conversions.inSample(
                extract, given.decimal("sample"), given.decimal("volume"), given.decimal("dilution"));
        return Answer.of()
                .with("mgPerKg", inSample)
                .inWords("dilution.result", Decimals.of(extract), Answer.forPeople(inSample))
                .by("dilution.formula")
                .plotted(() -> Plots.chart(
                        Plots.axis("dilution"),
                        Plots.axis("mg-per-kg"),
                        Plots.curve(
                                "in-sample",
                                1,
                                Math.max(10, 2 * given.number("dilution")),
                                times -> given.number("extract")
                                        * given.number("volume")
                                        / given.number("sample")
                                        * times)));
    }

    private static Answer protein(Given given) {
        BigDecimal percent = given.decimal("protein-percent");
        boolean ofProtein = given.has("protein");
        BigDecimal answer = ofProtein
                ? Conversions.foodOf(given.decimal("protein"), percent)
                : Conversions.proteinOf(given.decimal("food"), percent);
        double from = ofProtein ? given.number("protein") : given.number("food");
        double times = ofProtein ? 100 / percent.doubleValue() : percent.doubleValue() / 100;
        return Answer.of()
                .with(ofProtein ? "mgFoodPerKg" : "mgProteinPerKg", answer)
                .inWords(
                        ofProtein ? "protein.to-food" : "protein.to-protein",
                        Answer.forPeople(given.decimal(ofProtein ? "protein" : "food")),
                        Answer.forPeople(answer))
                .by("protein.formula")
                .minding("protein.basis")
                .plotted(() -> Plots.chart(
                        Plots.axis(ofProtein ? "protein" : "food"),
                        Plots.axis(ofProtein ? "food" : "protein"),
                        Plots.curve("conversion", 0, Math.max(1, 2 * from), mg -> mg * times)));
    }
}

package wickbench.figures.sums;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import wickbench.api.chart.Series;
import wickbench.figures.NoAnswer;
import wickbench.figures.store.Ageing;
import wickbench.figures.store.Intermittent;
import wickbench.figures.store.Reorder;
import wickbench.figures.store.Spell;
import wickbench.figures.store.TenDegrees;

/** Kept cold, and enough of it. */
final class StoreSums {
    private StoreSums() {}

    static List<Sum> all() {
        return List.of(
                WarmthSum.sum(),
                Sum.of(
                        "excursion",
                        Topic.STORE,
                        List.of(
                                Input.number("hours").like("6"),
                                Input.number("celsius").like("25"),
                                Input.number("reference").usual("5"),
                                Input.number("heat").optional().like("83.144"),
                                Input.number("q10").optional()),
                        StoreSums::excursion),
                Sum.of(
                        "reorder",
                        Topic.STORE,
                        List.of(
                                Input.number("demand").like("20"),
                                Input.number("lead").like("6"),
                                Input.number("service").usual("0.95"),
                                Input.flag("poisson"),
                                Input.number("demand-sd").optional().like("4").only("poisson", "no"),
                                Input.number("lead-sd").optional().like("1.5").only("poisson", "no"),
                                Input.number("order-cost").optional(),
                                Input.number("holding-cost").optional()),
                        StoreSums::reorder),
                Sum.of(
                        "demand",
                        Topic.STORE,
                        List.of(
                                Input.table("demands", "demand").like("demand\n0\n0\n5\n0\n0\n0\n3\n0\n6\n0\n0\n4"),
                                Input.number("alpha").usual("0.1")),
                        StoreSums::demand));
    }

    private static Answer excursion(Given given) {
        if (given.has("heat") && given.has("q10")) {
            throw NoAnswer.of("q10", "excursion.one-law");
        }
        double reference = given.number("reference");
        Spell spell = new Spell(given.number("hours"), given.number("celsius"));
        return given.has("q10")
                ? byTen(new TenDegrees(given.number("q10")), spell, reference)
                : byHeat(given.has("heat") ? new Ageing(given.number("heat")) : Ageing.usual(), spell, reference);
    }

    private static Answer byHeat(Ageing ageing, Spell spell, double reference) {
        return used(spell, reference, celsius -> ageing.factor(reference, celsius))
                .with("q10", ageing.q10(reference))
                .by("excursion.arrhenius");
    }

    private static Answer byTen(TenDegrees rule, Spell spell, double reference) {
        return used(spell, reference, celsius -> rule.factor(reference, celsius))
                .with("q10", rule.q10())
                .by("excursion.ten-degrees");
    }

    private static Answer used(Spell spell, double reference, DoubleUnaryOperator factor) {
        double times = factor.applyAsDouble(spell.celsius());
        return Answer.of()
                .with("used", spell.hours() * times)
                .with("factor", times)
                .inWords(
                        "excursion.result",
                        Answer.forPeople(spell.hours()),
                        Answer.forPeople(spell.celsius()),
                        Answer.forPeople(spell.hours() * times),
                        Answer.forPeople(reference))
                .minding("warmth.screening")
                .plotted(() -> Plots.chart(
                        Plots.axis("celsius"),
                        Plots.axis("used"),
                        Plots.curve(
                                "used",
                                Math.min(reference, spell.celsius()),
                                Math.max(reference, spell.celsius()) + 10,
                                celsius -> spell.hours() * factor.applyAsDouble(celsius))));
    }

    private static Answer reorder(Given given) {
        double demand = given.number("demand");
        double lead = given.number("lead");
        double service = given.number("service");
        boolean rare = given.flag("poisson");
        Reorder.Supply supply = new Reorder.Supply(
                demand,
                given.optional("demand-sd").orElse(0.0),
                lead,
                given.optional("lead-sd").orElse(0.0));
        Reorder reorder = rare ? Reorder.poisson(demand * lead, service) : Reorder.normal(supply, service);
        Answer answer = Answer.of()
                .with("reorderPoint", reorder.point())
                .with("safetyStock", reorder.safety())
                .with("leadDemand", reorder.leadDemand())
                .inWords("reorder.result", Answer.forPeople(reorder.point()), Answer.percent(service))
                .by(rare ? "reorder.poisson" : "reorder.normal")
                .plotted(() -> Plots.chart(
                        Plots.axis("service"),
                        Plots.axis("reorder"),
                        Plots.curve(
                                "reorder",
                                0.5,
                                0.999,
                                at -> (rare ? Reorder.poisson(demand * lead, at) : Reorder.normal(supply, at))
                                        .point())));
        return quantity(given, demand, answer);
    }

    private static Answer quantity(Given given, double demand, Answer answer) {
        if (given.has("order-cost") != given.has("holding-cost")) {
            throw NoAnswer.of(given.has("order-cost") ? "holding-cost" : "order-cost", "reorder.both-costs");
        }
        return given.has("order-cost")
                ? answer.with(
                                "orderQuantity",
                                Reorder.economicQuantity(
                                        demand, given.number("order-cost"), given.number("holding-cost")))
                        .by("reorder.quantity")
                : answer;
    }

    private static Answer demand(Given given) {
        double[] demands = given.table("demands", "demand").numbers(0);
        Intermittent demand = Intermittent.of(Arrays.stream(demands).boxed().toList(), given.number("alpha"));
        return Answer.of()
                .with("plain", demand.plain())
                .with("sba", demand.halfCorrected())
                .with("sbj", demand.fullCorrected())
                .with("size", demand.size())
                .with("interval", demand.interval())
                .inWords(
                        "demand.result",
                        Answer.forPeople(demand.halfCorrected()),
                        Answer.forPeople(demand.size()),
                        Answer.forPeople(demand.interval()))
                .by("demand.formula")
                .plotted(() -> Plots.with(
                        Plots.chart(
                                Plots.axis("period"),
                                Plots.axis("demand"),
                                Plots.series("demand", Series.Mark.BARS, Plots.counted(demands.length, 1), demands)),
                        Plots.limit("rate", demand.halfCorrected())));
    }
}

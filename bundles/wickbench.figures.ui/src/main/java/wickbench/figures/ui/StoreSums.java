package wickbench.figures.ui;

import static wickbench.figures.ui.Sum.input;

import java.util.List;
import wickbench.figures.store.Ageing;
import wickbench.figures.store.Reorder;
import wickbench.figures.store.Spell;

/** Storing and ordering. */
final class StoreSums {
    private StoreSums() {}

    static List<Sum> all() {
        return List.of(
                new Sum(
                        "excursion",
                        List.of(
                                input("hours", "6"),
                                input("celsius", "25"),
                                input("reference", "5"),
                                input("heat", "83.144")),
                        StoreSums::excursion),
                new Sum(
                        "reorder",
                        List.of(
                                input("demand", "20"),
                                input("demand-sd", "4"),
                                input("lead", "6"),
                                input("lead-sd", "1.5"),
                                input("service", "0.95")),
                        StoreSums::reorder),
                new Sum(
                        "rare-demand",
                        List.of(input("lead-demand", "5"), input("service", "0.95")),
                        StoreSums::rareDemand),
                new Sum(
                        "order",
                        List.of(input("demand", "1200"), input("order-cost", "50"), input("holding-cost", "6")),
                        StoreSums::order));
    }

    private static Answer excursion(Given given) {
        Ageing ageing = new Ageing(given.number("heat"));
        double reference = given.number("reference");
        double hours = given.number("hours");
        Spell spell = new Spell(hours, given.number("celsius"));
        return Answer.of("figure.used", ageing.shelfLifeUsed(spell, reference))
                .with("figure.factor", ageing.factor(reference, spell.celsius()))
                .with("figure.q10", ageing.q10(reference))
                .plot(
                        "axis.celsius",
                        "axis.used",
                        reference,
                        Math.max(reference, spell.celsius()) + 10,
                        celsius -> ageing.shelfLifeUsed(new Spell(hours, celsius), reference));
    }

    private static Answer reorder(Given given) {
        Reorder.Supply supply = new Reorder.Supply(
                given.number("demand"), given.number("demand-sd"), given.number("lead"), given.number("lead-sd"));
        Reorder reorder = Reorder.normal(supply, given.number("service"));
        return told(reorder)
                .plot(
                        "axis.service",
                        "axis.reorder",
                        0.5,
                        0.999,
                        service -> Reorder.normal(supply, service).point());
    }

    private static Answer rareDemand(Given given) {
        return told(Reorder.poisson(given.number("lead-demand"), given.number("service")));
    }

    private static Answer told(Reorder reorder) {
        return Answer.of("figure.reorder", reorder.point())
                .with("figure.safety", reorder.safety())
                .with("figure.lead-demand", reorder.leadDemand());
    }

    private static Answer order(Given given) {
        return Answer.of(
                "figure.quantity",
                Reorder.economicQuantity(
                        given.number("demand"), given.number("order-cost"), given.number("holding-cost")));
    }
}

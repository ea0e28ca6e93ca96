package wickbench.plant.face;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.plant.PlantState;
import wickbench.plant.allergen.Allergen;
import wickbench.plant.allergen.AllergenList;
import wickbench.plant.allergen.Allergens;
import wickbench.plant.clean.Validation;
import wickbench.plant.product.Product;
import wickbench.plant.product.WorstCase;
import wickbench.plant.programme.Programme.Held;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.CleanWords;
import wickbench.plant.terms.PlantWords;
import wickbench.plant.terms.ProductWords;

/** Prints what is stated of the plant. */
final class PlantPrint {
    private final Terminal terminal;

    PlantPrint(Terminal terminal) {
        this.terminal = terminal;
    }

    void plant(PlantState state) {
        if (terminal.json()) {
            terminal.json(Json.object()
                    .with(
                            "lines",
                            Json.array(state.lines().stream()
                                    .map(line -> line.body())
                                    .toList()))
                    .with(
                            "points",
                            Json.array(state.points().stream()
                                    .map(point -> point.body())
                                    .toList()))
                    .with(
                            "products",
                            Json.array(
                                    state.products().stream().map(Product::body).toList()))
                    .with(
                            "cleans",
                            Json.array(state.cleans().stream()
                                    .map(each -> each.clean().body())
                                    .toList()))
                    .with(
                            "rules",
                            Json.array(state.rules().stream()
                                    .map(Held::rule)
                                    .map(rule -> rule.body())
                                    .toList())));
            return;
        }
        if (state.lines().isEmpty()) {
            terminal.line(PlantWords.get("plant.empty"));
            return;
        }
        state.lines()
                .forEach(line -> terminal.line(PlantWords.get(
                        "plant.line",
                        line.id(),
                        line.name(),
                        state.pointsOf(line.id()).size(),
                        state.productsOf(line.id()).size(),
                        state.cleansOf(line.id()).size())));
        terminal.line("");
        terminal.table(
                columns("product", "name", "lines", "holds"),
                state.products().stream().map(PlantPrint::row).toList());
    }

    private static List<String> row(Product product) {
        return List.of(
                product.id(),
                product.name(),
                String.join(", ", new TreeSet<>(product.lines())),
                ProductWords.holds(product));
    }

    void cleans(List<Validation> cleans) {
        if (terminal.json()) {
            terminal.json(Json.array(cleans.stream().map(PlantPrint::json).toList()));
            return;
        }
        terminal.table(
                columns("clean", "line", "state", "passes", "until", "for"),
                cleans.stream().map(PlantPrint::row).toList());
        cleans.stream()
                .filter(Validation::ready)
                .forEach(each -> terminal.line(
                        PlantWords.get("validation.ready", each.clean().id())));
    }

    private static List<String> row(Validation each) {
        return List.of(
                each.clean().id(),
                each.clean().line(),
                PlantWords.get("validity." + each.state().code()),
                CleanWords.passes(each),
                each.until().map(Object::toString).orElse(""),
                ChangeWords.names(each.allergens()));
    }

    private static Json.Obj json(Validation each) {
        return Json.object()
                .with("clean", each.clean().id())
                .with("line", each.clean().line())
                .with("state", each.state().code())
                .with("passes", each.passes())
                .with("ready", each.ready())
                .withText("until", each.until().map(Object::toString))
                .withText("why", each.why())
                .with(
                        "allergens",
                        Json.texts(new TreeSet<>(each.allergens()).stream().toList()))
                .with(
                        "runs",
                        Json.array(each.runs().stream()
                                .map(ran -> (Json) Json.object()
                                        .with("at", ran.run().at().toString())
                                        .with("passed", ran.passed())
                                        .with(
                                                "lacks",
                                                Json.array(ran.lacks().stream()
                                                        .map(lack -> (Json) Json.object()
                                                                .with(
                                                                        "why",
                                                                        lack.why()
                                                                                .code())
                                                                .with("place", lack.place()))
                                                        .toList())))
                                .toList()));
    }

    void worst(List<WorstCase> ranked) {
        if (terminal.json()) {
            terminal.json(Json.array(ranked.stream()
                    .map(each -> (Json) Json.object()
                            .with("product", each.product().id())
                            .with(
                                    "reasons",
                                    Json.texts(each.reasons().stream()
                                            .map(reason -> reason.code())
                                            .toList())))
                    .toList()));
            return;
        }
        terminal.table(
                columns("product", "reasons"),
                ranked.stream()
                        .map(each -> List.of(each.product().id(), ProductWords.reasons(each)))
                        .toList());
        terminal.line(PlantWords.get("worst.practice"));
    }

    void allergens(Optional<String> code) {
        List<AllergenList> lists = code.map(text -> List.of(Typed.choice("--list", text, AllergenList.class)))
                .orElseGet(() -> List.of(AllergenList.values()));
        for (AllergenList list : lists) {
            List<Allergen> of = Allergens.all().stream()
                    .filter(allergen -> allergen.lists().contains(list))
                    .toList();
            if (terminal.json()) {
                terminal.json(json(list, of));
            } else {
                terminal.line(PlantWords.get("list.title", list.code(), list.source(), list.date()));
                terminal.line("  "
                        + of.stream()
                                .map(allergen -> ChangeWords.name(allergen.code()))
                                .collect(Collectors.joining(", ")));
            }
        }
    }

    private static Json.Obj json(AllergenList list, List<Allergen> of) {
        return Json.object()
                .with("list", list.code())
                .with("source", list.source())
                .with("date", list.date())
                .with("allergens", Json.texts(of.stream().map(Allergen::code).toList()));
    }

    private static List<String> columns(String... names) {
        List<String> columns = new ArrayList<>();
        for (String name : names) {
            columns.add(PlantWords.get("column." + name));
        }
        return columns;
    }
}

package wickbench.plant.face;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.plant.changeover.Changeover;
import wickbench.plant.changeover.Changing;
import wickbench.plant.changeover.Leaving;
import wickbench.plant.changeover.Probe;
import wickbench.plant.product.Product;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.PlantWords;

/** Prints what changes ask for. */
final class ChangePrint {
    private final Terminal terminal;

    ChangePrint(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(Changeover change) {
        if (terminal.json()) {
            terminal.json(json(change));
            return;
        }
        ChangeWords.explain(change).forEach(terminal::line);
        if (!change.tests().isEmpty()) {
            terminal.line("");
            terminal.table(
                    List.of(
                            PlantWords.get("column.place"),
                            PlantWords.get("column.method"),
                            PlantWords.get("column.for")),
                    change.tests().stream().map(ChangePrint::row).toList());
        }
        terminal.line("");
        terminal.line(PlantWords.get("change.caution"));
    }

    private static List<String> row(Probe test) {
        String place = test.drawn() ? PlantWords.get("change.pool", test.place()) : test.place();
        return List.of(place, test.method().toString(), ChangeWords.names(test.allergens()));
    }

    void matrix(List<Product> products, Changing changing) {
        List<List<Changeover>> rows = products.stream()
                .map(from -> products.stream().map(to -> changing.of(from, to)).toList())
                .toList();
        if (terminal.json()) {
            terminal.json(Json.array(rows.stream()
                    .flatMap(List::stream)
                    .filter(change -> !change.from().id().equals(change.to().id()))
                    .map(ChangePrint::json)
                    .toList()));
            return;
        }
        List<String> header = new ArrayList<>(List.of(PlantWords.get("column.from-to")));
        products.forEach(product -> header.add(product.id()));
        terminal.table(
                header,
                rows.stream()
                        .map(row -> {
                            List<String> cells =
                                    new ArrayList<>(List.of(row.get(0).from().id()));
                            row.forEach(change -> cells.add(ChangeWords.cell(change)));
                            return cells;
                        })
                        .toList());
        terminal.line(PlantWords.get("change.caution"));
    }

    static Json.Obj json(Changeover change) {
        return Json.object()
                .with("line", change.line())
                .with("from", change.from().id())
                .with("to", change.to().id())
                .with("allowed", change.allowed())
                .with("tested", change.tested())
                .with(
                        "faults",
                        Json.texts(change.faults().stream()
                                .map(fault -> fault.code())
                                .toList()))
                .with(
                        "leaving",
                        Json.array(
                                change.leaving().stream().map(ChangePrint::json).toList()))
                .with(
                        "tests",
                        Json.array(
                                change.tests().stream().map(ChangePrint::json).toList()))
                .with("draw", change.draw())
                .withText("clean", change.clean().map(each -> each.clean().id()))
                .withText("validity", change.clean().map(each -> each.state().code()))
                .with("test_min", change.testMinutes())
                .with("minutes", change.minutes());
    }

    private static Json.Obj json(Leaving leaving) {
        return Json.object()
                .with("allergen", leaving.held().allergen())
                .with("form", leaving.held().form().code())
                .withText("part", leaving.held().part())
                .with("covered", leaving.covered())
                .with("tested", leaving.tested())
                .with(
                        "methods",
                        Json.array(leaving.ways().stream()
                                .map(way -> (Json) Json.object()
                                        .with("method", way.method().toString())
                                        .with("route", way.route().code())
                                        .with("sees", way.sees())
                                        .with("not_seen", Json.texts(way.notSeen())))
                                .collect(Collectors.toList())));
    }

    private static Json.Obj json(Probe test) {
        return Json.object()
                .with("place", test.place())
                .with("method", test.method().id().value())
                .with("route", test.route().code())
                .with("allergens", Json.texts(test.allergens().stream().sorted().toList()))
                .with("drawn", test.drawn());
    }
}

package wickbench.plant.face;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.command.Terminal;
import wickbench.api.json.Json;
import wickbench.api.words.Decimals;
import wickbench.plant.order.ChangeTable;
import wickbench.plant.order.DayOrder.Found;
import wickbench.plant.terms.PlantWords;

/** Prints an order: a table for people, one value for machines. */
record OrderPrint(ChangeTable table, boolean round, Terminal terminal) {

    void print(Found found) {
        if (terminal.json()) {
            terminal.json(json(found));
            return;
        }
        terminal.table(
                List.of(PlantWords.get("order.no"), PlantWords.get("order.product"), PlantWords.get("order.change")),
                rows(found));
        terminal.line("");
        terminal.line(
                found.optimal()
                        ? PlantWords.get("order.optimal", Decimals.of(found.total()))
                        : PlantWords.get(
                                "order.within",
                                Decimals.of(found.total()),
                                Decimals.of(found.bound())));
        terminal.line(found.saving()
                .map(saving -> PlantWords.get("order.saving", Decimals.of(saving)))
                .orElseGet(() -> PlantWords.get("order.entered-not")));
        terminal.line(PlantWords.get("order.caution"));
    }

    private List<List<String>> rows(Found found) {
        List<Integer> order = found.order();
        List<List<String>> rows = new ArrayList<>();
        for (int place = 0; place < order.size(); place++) {
            String change = place == 0 ? "" : minutes(order.get(place - 1), order.get(place));
            rows.add(List.of(Integer.toString(place + 1), table.products().get(order.get(place)), change));
        }
        if (round && order.size() > 1) {
            int first = order.get(0);
            rows.add(List.of("", table.products().get(first), minutes(order.get(order.size() - 1), first)));
        }
        return rows;
    }

    private String minutes(int from, int to) {
        return Decimals.of(table.minutes(from, to).orElseThrow());
    }

    private Json.Obj json(Found found) {
        Json.Obj out = Json.object()
                .with("total_min", found.total())
                .with("optimal", found.optimal())
                .with("bound_min", found.bound())
                .with(
                        "order",
                        Json.texts(found.order().stream()
                                .map(table.products()::get)
                                .toList()));
        return found.entered()
                .map(entered -> out.with("entered_min", entered)
                        .with("saving_min", found.saving().orElseThrow()))
                .orElse(out);
    }
}

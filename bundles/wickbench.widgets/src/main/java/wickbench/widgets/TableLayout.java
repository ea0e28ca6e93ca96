package wickbench.widgets;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wickbench.api.json.Json;

/**
 * How a person has laid out a table.
 *
 * @param order ids of all columns, hidden ones too
 * @param widths at 100 %
 * @param hidden ids of the columns not shown
 */
record TableLayout(List<String> order, Map<String, Integer> widths, Set<String> hidden, Optional<Sort> sort) {
    private static final int NARROWEST = 24;
    private static final int WIDEST = 2000;

    TableLayout {
        order = List.copyOf(order);
        widths = Map.copyOf(widths);
        hidden = Set.copyOf(hidden);
    }

    static <T> TableLayout first(TableSpec<T> spec) {
        return new TableLayout(
                spec.columns().stream().map(Column::id).toList(),
                spec.columns().stream().collect(Collectors.toMap(Column::id, Column::width)),
                spec.columns().stream()
                        .filter(column -> !column.shown())
                        .map(Column::id)
                        .collect(Collectors.toSet()),
                spec.sort());
    }

    /** Takes from what was kept all that still makes sense; columns that it does not know stand last. */
    TableLayout with(Json.Obj kept) {
        Set<String> ids = new LinkedHashSet<>(texts(kept, "order"));
        ids.retainAll(order);
        ids.addAll(order);
        Map<String, Integer> wide = new LinkedHashMap<>(widths);
        kept.get("widths")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .ifPresent(widths ->
                        widths.members().forEach((id, width) -> width(width).ifPresent(px -> wide.replace(id, px))));
        Set<String> gone = kept.get("hidden").isPresent() ? new LinkedHashSet<>(texts(kept, "hidden")) : hidden;
        Set<String> hides = ids.stream().filter(gone::contains).collect(Collectors.toSet());
        return new TableLayout(
                new ArrayList<>(ids),
                wide,
                hides.containsAll(ids) ? hidden : hides,
                sort(kept).or(() -> sort));
    }

    Json.Obj toJson() {
        Json.Obj wide = Json.object();
        for (String id : order) {
            wide = wide.with(id, widths.get(id));
        }
        Json.Obj all = Json.object()
                .with("order", Json.texts(order))
                .with("widths", wide)
                .with(
                        "hidden",
                        Json.texts(order.stream().filter(hidden::contains).toList()));
        return all.withOptional(
                "sort", sort.map(by -> Json.object().with("column", by.column()).with("ascending", by.ascending())));
    }

    TableLayout sortedBy(Optional<Sort> by) {
        return new TableLayout(order, widths, hidden, by);
    }

    /** Shows a hidden column or hides a shown one; the last one shown stays. */
    TableLayout toggled(String id) {
        Set<String> next = new LinkedHashSet<>(hidden);
        if (!next.remove(id)) {
            next.add(id);
        }
        return next.size() == order.size() ? this : new TableLayout(order, widths, next, sort);
    }

    private Optional<Sort> sort(Json.Obj kept) {
        return kept.get("sort")
                .filter(Json.Obj.class::isInstance)
                .map(Json.Obj.class::cast)
                .flatMap(by -> by.get("column")
                        .filter(id -> id instanceof Json.Text text && order.contains(text.value()))
                        .map(id -> new Sort(
                                ((Json.Text) id).value(),
                                by.get("ascending")
                                        .filter(new Json.Bool(false)::equals)
                                        .isEmpty())));
    }

    private static List<String> texts(Json.Obj kept, String name) {
        return kept.get(name).filter(Json.Arr.class::isInstance).map(Json.Arr.class::cast).stream()
                .flatMap(list -> list.items().stream())
                .filter(Json.Text.class::isInstance)
                .map(item -> ((Json.Text) item).value())
                .toList();
    }

    private static Optional<Integer> width(Json kept) {
        return Optional.of(kept)
                .filter(Json.Num.class::isInstance)
                .map(number -> ((Json.Num) number).value())
                .filter(value -> value.compareTo(BigDecimal.valueOf(NARROWEST)) >= 0)
                .filter(value -> value.compareTo(BigDecimal.valueOf(WIDEST)) <= 0)
                .map(BigDecimal::intValue);
    }
}

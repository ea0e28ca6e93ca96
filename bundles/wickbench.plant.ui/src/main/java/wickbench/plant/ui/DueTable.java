package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.plant.programme.DueItem;
import wickbench.plant.programme.DueState;
import wickbench.plant.terms.PlantTerms;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** What the programme makes due, the most urgent first. */
record DueTable(SiteTimes times) {

    TableSpec<DueItem> of(Supplier<List<DueItem>> items) {
        List<Column<DueItem>> columns = List.of(
                Column.<DueItem>marked("state", title("state"), 110, item -> mark(item.state())),
                text("rule", 110, item -> item.rule().id()),
                text("line", 60, item -> item.rule().line()),
                text("about", 190, DueTable::about),
                text(
                        "missing",
                        90,
                        item -> PlantUiWords.get(
                                "due.of", item.missing().size(), item.samples().size())),
                text("by", 130, item -> times.minute(item.by())),
                text("since", 130, item -> times.minute(item.since())));
        return new TableSpec<>(
                "plant.due",
                PlantUiWords.get("due.name"),
                columns,
                new FreshRows<>(items, columns),
                Optional.empty(),
                PlantUiWords.get("due.none"));
    }

    /** Returns what made it due, in words. */
    static String about(DueItem item) {
        return item.about()
                .orElseGet(() -> PlantTerms.said("when." + item.rule().when().code()));
    }

    static Mark mark(DueState state) {
        String word = PlantTerms.said("due-state." + state.code());
        return switch (state) {
            case MISSED -> new Mark(word, Shape.CROSS, Meaning.ALARM);
            case OVERDUE -> new Mark(word, Shape.TRIANGLE, Meaning.CAUTION);
            case DUE -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
            case DONE -> new Mark(word, Shape.RING, Meaning.CALM);
            case EXCUSED -> new Mark(word, Shape.BAR, Meaning.NEUTRAL);
        };
    }

    private static Column<DueItem> text(String id, int width, Function<DueItem, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return PlantUiWords.get("column." + id);
    }
}

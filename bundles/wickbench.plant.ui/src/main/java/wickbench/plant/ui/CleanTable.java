package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.plant.clean.Validation;
import wickbench.plant.terms.ChangeWords;
import wickbench.plant.terms.CleanWords;
import wickbench.plant.terms.PlantTerms;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** Cleans with how each stands. */
record CleanTable() {

    TableSpec<Validation> of(Supplier<List<Validation>> cleans) {
        List<Column<Validation>> columns = List.of(
                text("clean", 80, row -> row.clean().id()),
                text("line", 60, row -> row.clean().line()),
                Column.<Validation>marked("state", title("state"), 210, CleanTable::mark),
                text("passes", 130, CleanWords::passes),
                text("until", 100, row -> row.until().map(Object::toString).orElse("")),
                text("for", 160, row -> ChangeWords.names(row.allergens())),
                text("minutes", 80, row -> Integer.toString(row.clean().minutes()))
                        .rightAligned());
        return new TableSpec<>(
                "plant.cleans",
                PlantUiWords.get("cleans.name"),
                columns,
                new FreshRows<>(cleans, columns),
                Optional.empty(),
                PlantUiWords.get("cleans.none"));
    }

    static Mark mark(Validation row) {
        String word = PlantTerms.said("validity." + row.state().code());
        return switch (row.state()) {
            case VALIDATED, REVALIDATING -> new Mark(word, Shape.RING, Meaning.CALM);
            case UNDER_WAY -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
            case LAPSED -> new Mark(word, Shape.TRIANGLE, Meaning.CAUTION);
            case NEVER -> new Mark(word, Shape.CROSS, Meaning.CAUTION);
        };
    }

    private static Column<Validation> text(String id, int width, Function<Validation, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return PlantUiWords.get("column." + id);
    }
}

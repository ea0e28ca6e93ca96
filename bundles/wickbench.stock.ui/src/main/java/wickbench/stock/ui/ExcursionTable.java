package wickbench.stock.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.api.words.Decimals;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.StockTerms;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.Spans;
import wickbench.widgets.TableSpec;

/** Times outside a fridge's range, gaps among them. */
record ExcursionTable(SiteTimes times) {
    TableSpec<Excursion> of(Supplier<List<Excursion>> excursions) {
        List<Column<Excursion>> columns = List.of(
                Column.<Excursion>marked("cause", title("cause"), 150, ExcursionTable::mark),
                text("from", 130, each -> times.minute(each.from())),
                text("length", 100, each -> Spans.words(each.length())),
                text("peak", 80, each -> measured(each) ? number(each.peak()) + " \u00b0C" : "")
                        .rightAligned(),
                text("degree-hours", 96, each -> measured(each) ? number(each.degreeHours()) : "")
                        .rightAligned(),
                text("to", 130, each -> times.minute(each.to())));
        return new TableSpec<>(
                "stock.excursions",
                StockUiWords.get("excursions.name"),
                columns,
                new FreshRows<>(excursions, columns),
                Optional.empty(),
                StockUiWords.get("excursions.none"));
    }

    /** Freezing stands apart: no allowance covers it. */
    static Mark mark(Excursion each) {
        String word = StockTerms.cause(each.cause());
        return switch (each.cause()) {
            case FROZEN -> new Mark(word, Shape.DOUBLE_TRIANGLE, Meaning.EXTREME);
            case WARM, COLD -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
            case GAP, STUCK -> new Mark(word, Shape.BAR, Meaning.CAUTION);
            case STATED -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
        };
    }

    private static boolean measured(Excursion each) {
        return each.cause() != Cause.GAP && each.cause() != Cause.STUCK;
    }

    static String number(double value) {
        return Decimals.of(value, 1);
    }

    private static Column<Excursion> text(String id, int width, Function<Excursion, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return StockUiWords.get("column." + id);
    }
}

package wickbench.stock.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.stock.Use;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.TableSpec;

/** Every result read with a lot. */
record UseTable(SiteTimes times) {
    TableSpec<Use> of(Supplier<List<Use>> uses) {
        List<Column<Use>> columns = List.of(
                text("when", 130, use -> times.minute(use.taken())),
                Column.<Use>marked("outcome", title("outcome"), 120, use -> Mark.of(use.outcome())),
                text("sample", 100, Use::sample),
                text("where", 140, Use::place),
                text("line", 60, use -> use.line().orElse("")),
                text("batch", 90, use -> use.batch().orElse("")),
                text("method", 150, Use::method),
                text("lot", 100, use -> use.lot().value()),
                text("operator", 80, use -> use.operator().value()),
                text("entry", 140, use -> use.ref().toString()));
        return new TableSpec<>(
                "stock.trace",
                StockUiWords.get("trace.name"),
                columns,
                new FreshRows<>(uses, columns),
                Optional.empty(),
                StockUiWords.get("trace.none"));
    }

    private static Column<Use> text(String id, int width, Function<Use, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return StockUiWords.get("column." + id);
    }
}

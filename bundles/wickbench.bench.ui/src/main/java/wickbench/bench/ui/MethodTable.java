package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.method.Method;
import wickbench.api.method.Methods.IssuedMethod;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.RowSource;
import wickbench.widgets.Shape;
import wickbench.widgets.Sort;
import wickbench.widgets.TableSpec;

/** The table of the site's methods. */
final class MethodTable {
    private MethodTable() {}

    static TableSpec<IssuedMethod> of(List<IssuedMethod> all) {
        List<Column<IssuedMethod>> columns = List.of(
                text("title", 215, Method::title),
                text("version", 60, method -> Integer.toString(method.ref().version()))
                        .rightAligned(),
                Column.<IssuedMethod>marked("state", title("state"), 100, MethodTable::state),
                Column.<IssuedMethod>marked("signature", title("signature"), 98, MethodTable::signature),
                text("route", 130, method -> ReadingWords.text(method.route())),
                text("limit", 130, method -> method.limit().value().toString()).rightAligned(),
                text("format", 230, method -> ReadingWords.text(method.format())),
                text("kit", 250, Method::kit),
                text("target", 100, method -> method.target().name()),
                text("id", 150, method -> method.ref().id().value()));
        return new TableSpec<>(
                "bench.methods",
                BenchUiWords.get("methods.name"),
                columns,
                RowSource.of(all, columns),
                Optional.of(new Sort("title", true)),
                BenchUiWords.get("methods.empty.title"));
    }

    static Mark state(IssuedMethod issued) {
        return issued.until().isEmpty()
                ? new Mark(BenchUiWords.get("state.in-force"), Shape.RING, Meaning.CALM)
                : new Mark(BenchUiWords.get("state.withdrawn"), Shape.BAR, Meaning.NEUTRAL);
    }

    /** Says whether a name stands under it; what was issued unsigned stays so. */
    static Mark signature(IssuedMethod issued) {
        return issued.signed()
                ? new Mark(BenchUiWords.get("state.signed"), Shape.RING, Meaning.CALM)
                : new Mark(BenchUiWords.get("state.unsigned"), Shape.TRIANGLE, Meaning.CAUTION);
    }

    private static Column<IssuedMethod> text(String id, int width, Function<Method, String> text) {
        return Column.of(id, title(id), width, row -> text.apply(row.method()));
    }

    private static String title(String id) {
        return BenchUiWords.get("column." + id);
    }
}

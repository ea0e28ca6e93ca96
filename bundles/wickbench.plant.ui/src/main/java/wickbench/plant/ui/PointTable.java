package wickbench.plant.ui;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.plant.PointLook;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.TableSpec;

/** Points by their latest outcome. */
record PointTable(SiteTimes times) {

    TableSpec<PointLook> of(Supplier<List<PointLook>> looks) {
        List<Column<PointLook>> columns = List.of(
                text("point", 170, look -> look.point().name()),
                Column.<PointLook>marked("outcome", title("outcome"), 120, PointMarks::of),
                text(
                        "tested",
                        125,
                        look -> look.latest()
                                .map(latest -> times.minute(latest.started()))
                                .orElse("")),
                text(
                        "method",
                        140,
                        look -> look.latest()
                                .map(latest -> latest.method().value())
                                .orElse("")));
        return new TableSpec<>(
                "plant.points",
                PlantUiWords.get("points.name"),
                columns,
                new FreshRows<>(looks, columns),
                Optional.empty(),
                PlantUiWords.get("points.none"));
    }

    private static Column<PointLook> text(String id, int width, Function<PointLook, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return PlantUiWords.get("column." + id);
    }
}

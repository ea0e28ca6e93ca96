package wickbench.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wickbench.api.words.Decimals;
import wickbench.stock.Outlook;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** How far each kit goes, and what to order by when. */
record OutlookTable(LocalDate today) {
    private static final int SOON = 14;

    TableSpec<Outlook> of(Supplier<List<Outlook>> outlooks) {
        List<Column<Outlook>> columns = List.of(
                text("kit", 230, Outlook::kit),
                Column.<Outlook>marked("order", title("order"), 204, this::order),
                text("boxes", 70, each -> Long.toString(each.boxes())).rightAligned(),
                text("strips", 70, each -> Long.toString(each.strips())).rightAligned(),
                text("demand", 96, each -> Decimals.of(each.demand(), 1)).rightAligned(),
                text("point", 80, each -> Decimals.of(Math.ceil(each.point()), 0))
                        .rightAligned(),
                text(
                        "runs-out",
                        100,
                        each -> each.runsOut().map(LocalDate::toString).orElse(StockUiWords.get("outlook.beyond"))),
                text("unused", 120, each -> Long.toString(unused(each))).rightAligned());
        return new TableSpec<>(
                "stock.outlook",
                StockUiWords.get("outlook.name"),
                columns,
                new FreshRows<>(outlooks, columns),
                Optional.empty(),
                StockUiWords.get("outlook.none"));
    }

    /** Says by when to order: at once, soon, or later. */
    Mark order(Outlook outlook) {
        if (outlook.orderBy().isEmpty()) {
            return new Mark(StockUiWords.get("order.not"), Shape.RING, Meaning.CALM);
        }
        LocalDate day = outlook.orderBy().get();
        if (!day.isAfter(today)) {
            return new Mark(StockUiWords.get("order.now"), Shape.TRIANGLE, Meaning.ALARM);
        }
        boolean soon = day.isBefore(today.plusDays(SOON));
        return new Mark(
                StockUiWords.get("order.by", day),
                soon ? Shape.DIAMOND : Shape.RING,
                soon ? Meaning.CAUTION : Meaning.CALM);
    }

    static long unused(Outlook outlook) {
        return outlook.waste().stream().mapToLong(Outlook.Waste::strips).sum();
    }

    private static Column<Outlook> text(String id, int width, Function<Outlook, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return StockUiWords.get("column." + id);
    }
}

package wickbench.stock.ui;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import wickbench.api.words.Decimals;
import wickbench.stock.Lot;
import wickbench.stock.LotState;
import wickbench.stock.StockTerms;
import wickbench.widgets.Bar;
import wickbench.widgets.Column;
import wickbench.widgets.FreshRows;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** The table of lots, first expired first. */
record LotTable(LocalDate today) {
    /** A bar is full at so many days; what lasts longer looks the same. */
    private static final long FULL_DAYS = 180;

    /** From so few days on the end is near. */
    private static final long NEAR_DAYS = 30;

    TableSpec<Lot> of(Supplier<List<Lot>> lots) {
        List<Column<Lot>> columns = List.of(
                text("lot", 92, lot -> lot.id().value()),
                Column.<Lot>marked("state", title("state"), 124, this::state),
                text("days", 136, this::days).barred(this::bar),
                text("effective", 92, lot -> lot.effective().toString()),
                text("kit", 150, lot -> lot.kit().name()),
                text("sealed", 62, lot -> LotTable.plain(lot.strips().sealed())).rightAligned(),
                text("opened", 54, lot -> LotTable.plain(lot.strips().open())).rightAligned(),
                text("label", 92, lot -> lot.label().toString()),
                text("place", 60, lot -> lot.place().orElse("")),
                text("others", 320, LotTable::others));
        return new TableSpec<>(
                "stock.lots",
                StockUiWords.get("lots.name"),
                columns,
                new FreshRows<>(lots, columns),
                Optional.empty(),
                StockUiWords.get("lots.none"));
    }

    /** Says how a lot stands; one that is past its day is out of date, whatever else it is. */
    Mark state(Lot lot) {
        String word = StockTerms.state(lot.state(), lot.expired(today));
        if (lot.state().kept() && lot.expired(today)) {
            return new Mark(word, Shape.CROSS, Meaning.ALARM);
        }
        return of(lot.state(), word);
    }

    private static Mark of(LotState state, String word) {
        return switch (state) {
            case FIT -> new Mark(word, Shape.RING, Meaning.CALM);
            case AWAITING_CHECK -> new Mark(word, Shape.SQUARE, Meaning.NOTICE);
            case QUARANTINED, QUARANTINED_UNCHECKED -> new Mark(word, Shape.DIAMOND, Meaning.CAUTION);
            case REJECTED -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
            case USED_UP -> new Mark(word, Shape.BAR, Meaning.NEUTRAL);
            case DESTROYED -> new Mark(word, Shape.CROSS, Meaning.NEUTRAL);
        };
    }

    /** Returns how many days are left; of a lot that nobody keeps any more, nothing. */
    String days(Lot lot) {
        return lot.state().kept() ? StockUiWords.get("lots.days", lot.daysLeft(today)) : "";
    }

    Bar bar(Lot lot) {
        long left = lot.state().kept() ? lot.daysLeft(today) : 0;
        double share = Math.max(0, Math.min(1, left / (double) FULL_DAYS));
        return new Bar(share, left > NEAR_DAYS ? Meaning.CALM : Meaning.CAUTION);
    }

    private static String others(Lot lot) {
        return lot.parts().stream()
                .skip(1)
                .filter(part -> part.left().signum() > 0)
                .map(part -> StockUiWords.get(
                        "lots.part",
                        part.part().name(),
                        plain(part.left()),
                        part.part().unit()))
                .collect(Collectors.joining(", "));
    }

    static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : Decimals.of(number.stripTrailingZeros());
    }

    private static Column<Lot> text(String id, int width, Function<Lot, String> text) {
        return Column.of(id, title(id), width, text);
    }

    private static String title(String id) {
        return StockUiWords.get("column." + id);
    }
}

package wickbench.ledger.ui;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wickbench.api.owed.OwedItem;
import wickbench.ledger.acts.Case;
import wickbench.ledger.acts.Product;
import wickbench.ledger.acts.ProductState;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Meaning;
import wickbench.widgets.RowSource;
import wickbench.widgets.Shape;
import wickbench.widgets.TableSpec;

/** What is open because of results, the oldest first, with its age. */
record CaseTable(SiteTimes times, Instant now) {
    TableSpec<Case> of(List<Case> open) {
        return new TableSpec<>(
                "ledger.cases",
                LedgerUiWords.get("cases.name"),
                columns(),
                RowSource.of(open, columns()),
                Optional.empty(),
                LedgerUiWords.get("cases.empty"));
    }

    private List<Column<Case>> columns() {
        return List.of(
                Column.<Case>of(
                        "since",
                        title("since"),
                        132,
                        each -> times.minute(each.result().happened())),
                Column.<Case>of(
                                "age",
                                title("age"),
                                60,
                                each -> age(each.result().happened(), now))
                        .rightAligned(),
                Column.<Case>marked("state", title("state"), 150, each -> mark(each)),
                Column.<Case>of(
                        "place", title("place"), 150, each -> each.result().place()),
                Column.<Case>of(
                        "sample", title("sample"), 100, each -> each.result().sample()),
                Column.<Case>of("batch", title("batch"), 110, CaseTable::batches),
                Column.<Case>of("owed", title("owed"), 260, CaseTable::owed));
    }

    /** Returns the mark of the product that is furthest from being decided. */
    static Mark mark(Case each) {
        return each.products().stream()
                .map(Product::state)
                .min(java.util.Comparator.comparing(CaseTable::decided))
                .map(CaseTable::mark)
                .orElse(mark(ProductState.FREE));
    }

    private static int decided(ProductState state) {
        return state == ProductState.HELD ? 0 : state.ended() ? 3 : state == ProductState.FREE ? 2 : 1;
    }

    static Mark mark(ProductState state) {
        String word = LedgerUiWords.get("state." + state.code());
        return switch (state) {
            case HELD, REWORKED -> new Mark(word, Shape.TRIANGLE, Meaning.ALARM);
            case IN_REWORK, IN_RELABELLING, IN_DESTRUCTION -> new Mark(word, Shape.DIAMOND, Meaning.CAUTION);
            case DESTROYED -> new Mark(word, Shape.CROSS, Meaning.NOTICE);
            case RELABELLED, RELEASED -> new Mark(word, Shape.RING, Meaning.CALM);
            case FREE -> new Mark(word, Shape.BAR, Meaning.NEUTRAL);
        };
    }

    static String age(Instant since, Instant now) {
        Duration age = Duration.between(since, now);
        return age.toDays() > 0
                ? LedgerUiWords.get("age.days", age.toDays())
                : LedgerUiWords.get("age.hours", Math.max(0, age.toHours()));
    }

    private static String batches(Case each) {
        return each.products().stream()
                .map(Product::name)
                .filter(name -> !name.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String owed(Case each) {
        return each.owed().stream()
                .filter(item -> !item.done())
                .map(OwedItem::step)
                .map(step -> ReadingWords.text(step.owed()))
                .distinct()
                .collect(Collectors.joining("; "));
    }

    private static String title(String id) {
        return LedgerUiWords.get("case.column." + id);
    }
}

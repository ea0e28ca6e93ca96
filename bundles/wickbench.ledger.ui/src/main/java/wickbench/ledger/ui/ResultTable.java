package wickbench.ledger.ui;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wickbench.api.words.Coded;
import wickbench.api.words.Decimals;
import wickbench.ledger.ResultRow;
import wickbench.reading.ReadingWords;
import wickbench.widgets.Column;
import wickbench.widgets.Mark;
import wickbench.widgets.Sort;
import wickbench.widgets.TableSpec;

/** The table of results. The ids of columns that sort are those of {@link wickbench.ledger.SortColumn}. */
record ResultTable(SiteTimes times, WhoIsWho people) {
    TableSpec<ResultRow> of(ResultSource source) {
        return new TableSpec<>(
                "ledger.results",
                LedgerUiWords.get("results.name"),
                columns(),
                source,
                Optional.of(new Sort("happened", false)),
                LedgerUiWords.get("results.empty"));
    }

    private static String held(ResultRow row) {
        if (row.held()) {
            return LedgerUiWords.get("held.yes");
        }
        return row.inDoubt() ? LedgerUiWords.get("held.doubt") : "";
    }

    private List<Column<ResultRow>> columns() {
        return List.of(
                text("happened", 132, row -> times.minute(row.happened())),
                Column.<ResultRow>marked(
                        "outcome", title("outcome"), 170, row -> Mark.of(row.outcome(), row.dilution())),
                text("place", 176, ResultRow::place),
                text("sample", 110, ResultRow::sample),
                text("line", 52, row -> row.line().orElse("")),
                text("method", 170, row -> row.method().toString()),
                said("held", 70, ResultTable::held),
                said("worst", 150, row -> row.worst().map(ResultTable::coded).orElse("")),
                text("batch", 130, row -> row.batch().orElse("")),
                text("operator", 150, row -> people.name(row.operator())),
                text("lot", 100, row -> row.lot().value()),
                text("target", 90, ResultRow::target).hidden(),
                said("reason", 120, row -> row.reason().map(ResultTable::coded).orElse("")),
                said("dilution", 70, row -> dilution(row.dilution())),
                said(
                        "control",
                        130,
                        row -> row.control().map(ResultTable::coded).orElse("")),
                said("route", 130, row -> coded(row.route())).hidden(),
                said("findings", 76, row -> Long.toString(row.findings()))
                        .rightAligned()
                        .hidden(),
                said("corrections", 90, row -> row.corrections() == 0 ? "" : Long.toString(row.corrections()))
                        .rightAligned(),
                said("signature", 200, row -> SignatureWords.under(row, people, times))
                        .hidden(),
                said(
                        "reviewed",
                        150,
                        row -> row.reviewed()
                                .map(review -> people.name(review.by()))
                                .orElse("")),
                said("sheet", 140, row -> row.sheet().orElse("")).hidden(),
                said("recorded", 132, row -> times.minute(row.recorded())).hidden(),
                said("recorded-by", 150, row -> people.name(row.recordedBy())).hidden(),
                said("entry", 110, row -> row.ref().toString()));
    }

    private static Column<ResultRow> text(String id, int width, Function<ResultRow, String> text) {
        return Column.of(id, title(id), width, text);
    }

    /** Makes a column that the ledger cannot sort by. */
    private static Column<ResultRow> said(String id, int width, Function<ResultRow, String> text) {
        return text(id, width, text).unsorted();
    }

    private static String title(String id) {
        return LedgerUiWords.get("column." + id);
    }

    private static String coded(Coded choice) {
        return ReadingWords.text(choice);
    }

    private static String dilution(BigDecimal times) {
        return times.compareTo(BigDecimal.ONE) == 0 ? "" : "\u00d7" + Decimals.of(times);
    }
}

package wickbench.ledger.ui;

import java.util.List;
import java.util.Optional;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultRow;
import wickbench.widgets.TableKit;

/** What stands on the page once the site is known and has results. */
record OpenLedger(FilterBar filters, WeekFold weeks, TableKit<ResultRow> table, ResultSide side, Ledger.Known known) {

    List<ResultRow> chosen() {
        return table.selected();
    }

    /** Returns what is shown: the filter, and the words that are looked for in the table. */
    Filter filter() {
        return filters.filter().withText(Optional.of(table.filter().strip()).filter(text -> !text.isEmpty()));
    }

    /** Shows the form for reports over what is shown. */
    void print() {
        side.print(filter(), this::chooseAgain);
    }

    /** Shows what is chosen in the table in place of a form. */
    private void chooseAgain() {
        chosen().stream().findFirst().ifPresent(row -> side.find(row.id().toString()));
    }

    void reload() {
        table.reload();
        weeks.reload();
    }
}

package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import wickbench.api.index.Rows;
import wickbench.api.reading.Outcome;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;

/** A page of results in the site's own order of outcomes: one range of the index for each of them, until the page is full. */
record ByOutcome(List<Condition> conditions, boolean ascending, List<Outcome> order) {

    List<ResultRow> rows(Rows rows, Optional<ResultRow> after, int size) {
        List<ResultRow> found = new ArrayList<>();
        Optional<ResultRow> from = after;
        for (Outcome outcome : from(after)) {
            if (found.size() < size) {
                found.addAll(of(outcome).rows(rows, from, size - found.size()));
                from = Optional.empty();
            }
        }
        return found;
    }

    private List<Outcome> from(Optional<ResultRow> after) {
        List<Outcome> inOrder = new ArrayList<>(order);
        if (!ascending) {
            Collections.reverse(inOrder);
        }
        return after.map(row -> inOrder.subList(inOrder.indexOf(row.outcome()), inOrder.size()))
                .orElse(inOrder);
    }

    private Question of(Outcome outcome) {
        List<Condition> asked = new ArrayList<>(conditions);
        asked.add(0, Condition.equal("outcome", outcome.code()));
        return new Question(asked, new Sort(SortColumn.HAPPENED, ascending));
    }
}

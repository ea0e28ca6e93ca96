package wickbench.ledger.ui;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;
import wickbench.api.words.Coded;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;
import wickbench.widgets.Ask;
import wickbench.widgets.RowSource;
import wickbench.widgets.Slice;

/**
 * The results as rows of a table, read by key.
 *
 * @param filter what stands over the table at that moment; may be called from any thread
 */
record ResultSource(Results results, Supplier<Filter> filter) implements RowSource<ResultRow> {
    @Override
    public Slice<ResultRow> rows(Ask ask, Optional<ResultRow> after, int size) {
        ResultPage page = results.page(filter(ask), sort(ask), after, size);
        return new Slice<>(page.rows(), page.more());
    }

    @Override
    public OptionalLong count(Ask ask) {
        return OptionalLong.of(results.count(filter(ask)));
    }

    @Override
    public void leaving(Ask ask) {
        results.refuseFalsified(filter(ask));
    }

    private Filter filter(Ask ask) {
        return filter.get().withText(Optional.of(ask.filter().strip()).filter(text -> !text.isEmpty()));
    }

    private static Sort sort(Ask ask) {
        return ask.sort()
                .map(sort -> new Sort(Coded.of(SortColumn.class, sort.column()), sort.ascending()))
                .orElse(Sort.NEWEST_FIRST);
    }
}

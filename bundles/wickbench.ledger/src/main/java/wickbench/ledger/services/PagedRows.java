package wickbench.ledger.services;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import wickbench.ledger.Filter;
import wickbench.ledger.ResultPage;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Results;
import wickbench.ledger.Sort;

/** All results that pass a filter, in order, read page by page, so that they may be many. */
record PagedRows<T>(Results results, Filter filter, Sort sort, Function<ResultRow, T> shown) implements Iterable<T> {
    private static final int PAGE = 1000;

    @Override
    public Iterator<T> iterator() {
        return new Paged();
    }

    /** Asks for the next page when the one before is used up. */
    private final class Paged implements Iterator<T> {
        private final Deque<ResultRow> page = new ArrayDeque<>();
        private Optional<ResultRow> last = Optional.empty();
        private boolean more = true;

        @Override
        public boolean hasNext() {
            if (page.isEmpty() && more) {
                ResultPage next = results.page(filter, sort, last, PAGE);
                page.addAll(next.rows());
                more = next.more();
            }
            return !page.isEmpty();
        }

        @Override
        public T next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            last = Optional.of(page.remove());
            return shown.apply(last.get());
        }
    }
}

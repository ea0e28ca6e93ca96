package wickbench.widgets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Supplier;

/**
 * Rows read anew each time a table begins from its first.
 *
 * @param <T> the row
 */
public final class FreshRows<T> implements RowSource<T> {
    private final Supplier<List<T>> read;
    private final List<Column<T>> columns;
    private volatile RowSource<T> now;

    public FreshRows(Supplier<List<T>> read, List<Column<T>> columns) {
        this.read = read;
        this.columns = columns;
        this.now = RowSource.of(List.of(), columns);
    }

    @Override
    public Slice<T> rows(Ask ask, Optional<T> after, int size) {
        if (after.isEmpty()) {
            now = RowSource.of(read.get(), columns);
        }
        return now.rows(ask, after, size);
    }

    @Override
    public OptionalLong count(Ask ask) {
        return now.count(ask);
    }
}

package wickbench.widgets;

import java.util.List;
import java.util.Optional;

/**
 * What a table shows.
 *
 * @param id under which its layout is remembered, for example {@code ledger.results}
 * @param name what it is, for screen readers
 * @param columns in their first order; at least one
 * @param source where the rows come from
 * @param sort the first order; empty means the source's own
 * @param empty what to say where there is no row and no filter
 */
public record TableSpec<T>(
        String id, String name, List<Column<T>> columns, RowSource<T> source, Optional<Sort> sort, String empty) {
    public TableSpec {
        columns = List.copyOf(columns);
        if (columns.isEmpty()) {
            throw new IllegalArgumentException("a table has a column");
        }
    }
}

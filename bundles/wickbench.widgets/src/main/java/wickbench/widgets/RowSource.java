package wickbench.widgets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.osgi.annotation.versioning.ConsumerType;

/**
 * Where a table's rows come from, a slice at a time.
 *
 * <p>Called off the UI thread, so it may ask the index. Slices follow one another by key: the row after which the next begins is
 * given back, so a million rows cost no more than the slice asked for.
 *
 * @param <T> the row; two rows that are the same thing are {@code equals}
 */
@ConsumerType
public interface RowSource<T> {

    /**
     * Reads rows in the order asked for.
     *
     * @param after the last row of the slice before; empty for the first
     * @param size how many at most
     */
    Slice<T> rows(Ask ask, Optional<T> after, int size);

    /** Returns how many rows there are in all for this question; empty when counting costs too much. */
    default OptionalLong count(Ask ask) {
        return OptionalLong.empty();
    }

    /**
     * Hears that rows are about to leave the house in a file; whoever knows that they must not, refuses here.
     *
     * @throws wickbench.api.check.Refusal in words that are shown, and no file is written
     */
    default void leaving(Ask ask) {}

    /** Returns a source over a list at hand, which filters and sorts by what the columns say. */
    static <T> RowSource<T> of(List<T> rows, List<Column<T>> columns) {
        return new ListSource<>(List.copyOf(rows), List.copyOf(columns));
    }
}

package wickbench.widgets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The rows at hand: a few slices that follow one another out of possibly very many.
 *
 * <p>It remembers after which row each slice began, so that one can go back to those that were let go.
 */
final class RowWindow<T> {
    static final int SLICE = 200;
    static final int SLICES = 10;

    private final List<T> rows = new ArrayList<>();
    private final List<Integer> sizes = new ArrayList<>();
    private final List<Optional<T>> starts = new ArrayList<>();
    private int firstSlice;
    private boolean more;

    List<T> rows() {
        return rows;
    }

    boolean more() {
        return more;
    }

    boolean before() {
        return firstSlice > 0;
    }

    /** Returns after which row the next slice begins. */
    Optional<T> nextStart() {
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(rows.size() - 1));
    }

    /** Returns after which row the slice before the window began. */
    Optional<T> previousStart() {
        return starts.get(firstSlice - 1);
    }

    /** Takes the next slice and returns how many rows were let go at the top. */
    int append(Slice<T> slice) {
        if (starts.size() == firstSlice + sizes.size()) {
            starts.add(nextStart());
        }
        rows.addAll(slice.rows());
        sizes.add(slice.rows().size());
        more = slice.more();
        if (sizes.size() <= SLICES) {
            return 0;
        }
        int gone = sizes.remove(0);
        rows.subList(0, gone).clear();
        firstSlice++;
        return gone;
    }

    /** Takes the slice before the window and returns how many rows were let go at the bottom. */
    int prepend(Slice<T> slice) {
        rows.addAll(0, slice.rows());
        sizes.add(0, slice.rows().size());
        firstSlice--;
        if (sizes.size() <= SLICES) {
            return 0;
        }
        int gone = sizes.remove(sizes.size() - 1);
        rows.subList(rows.size() - gone, rows.size()).clear();
        more = true;
        return gone;
    }

    void clear() {
        rows.clear();
        sizes.clear();
        starts.clear();
        firstSlice = 0;
        more = false;
    }

    /** Returns how many rows lie before the window. */
    long skipped() {
        return (long) firstSlice * SLICE;
    }
}

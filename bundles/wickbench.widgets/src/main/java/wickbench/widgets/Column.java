package wickbench.widgets;

import java.util.Optional;
import java.util.function.Function;

/**
 * A column of a table.
 *
 * @param <T> the row
 * @param id stable for good; what is remembered and exported hangs on it
 * @param title its words
 * @param width at 100 %, in pixels
 * @param right whether its values line up at the right, as numbers do
 * @param sortable whether the source can sort by it
 * @param shown whether it is shown at first
 * @param text what a cell says; also what is copied and exported
 * @param mark shape and colour beside the words; empty for a column of words alone
 * @param bar a bar behind the words; empty for a column without
 */
public record Column<T>(
        String id,
        String title,
        int width,
        boolean right,
        boolean sortable,
        boolean shown,
        Function<T, String> text,
        Optional<Function<T, Mark>> mark,
        Optional<Function<T, Bar>> bar) {

    /** Returns a column of words that can be sorted by. */
    public static <T> Column<T> of(String id, String title, int width, Function<T, String> text) {
        return new Column<>(id, title, width, false, true, true, text, Optional.empty(), Optional.empty());
    }

    /** Returns a column whose cells say a mark's word and show its shape and colour. */
    public static <T> Column<T> marked(String id, String title, int width, Function<T, Mark> mark) {
        return new Column<>(
                id,
                title,
                width,
                false,
                true,
                true,
                row -> mark.apply(row).word(),
                Optional.of(mark),
                Optional.empty());
    }

    /** Returns this column lined up at the right. */
    public Column<T> rightAligned() {
        return new Column<>(id, title, width, true, sortable, shown, text, mark, bar);
    }

    /** Returns this column without sorting. */
    public Column<T> unsorted() {
        return new Column<>(id, title, width, right, false, shown, text, mark, bar);
    }

    /** Returns this column hidden until someone wants it. */
    public Column<T> hidden() {
        return new Column<>(id, title, width, right, sortable, false, text, mark, bar);
    }

    /** Returns this column with a bar under its words, which says nothing that the words do not. */
    public Column<T> barred(Function<T, Bar> under) {
        return new Column<>(id, title, width, right, sortable, shown, text, mark, Optional.of(under));
    }
}

package wickbench.widgets;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;

/** What the words of each column need, as the system measures them; it only grows, so that columns do not jump while one filters. */
final class ColumnNeeds {
    /** At 100 %; what needs more holds sentences or long names, and is shortened behind a whole word where there is no room. */
    private static final int SENTENCE = 200;

    /** At 100 %: what is left of a sentence at the least, and what a title needs beside its words. */
    private static final int SHORTENED = 150;

    private static final int BESIDE = 16;

    /** At 100 %. */
    private static final int MOST = 1000;

    private final Theme theme;
    private final Map<Integer, Integer> needed = new HashMap<>();
    private final Map<Integer, Integer> titles = new HashMap<>();

    ColumnNeeds(Theme theme) {
        this.theme = theme;
    }

    /** Measures the rows that a table has now; the width of its columns is changed by it. */
    void measure(Table table, Map<Integer, Column<?>> shown) {
        GC gc = new GC(table);
        gc.setFont(table.getFont());
        shown.forEach((at, column) -> {
            titles.put(at, gc.textExtent(column.title()).x + theme.px(BESIDE));
            TableColumn measured = table.getColumn(at);
            measured.pack();
            int words = measured.getWidth();
            // a bar takes the other half
            int need = column.bar().isPresent() ? Math.max(words, theme.px(column.width())) : words;
            needed.merge(at, need, Math::max);
        });
        gc.dispose();
    }

    /** Returns the indices of columns that hold sentences. */
    Set<Integer> sentences(Map<Integer, Column<?>> shown) {
        return shown.keySet().stream().filter(at -> isLong(at, shown.get(at))).collect(Collectors.toSet());
    }

    ColumnWish wish(int at, Column<?> column) {
        int declared = theme.px(column.width());
        int need = Math.min(needed.getOrDefault(at, declared), theme.px(MOST));
        int least =
                isLong(at, column) ? Math.min(need, Math.max(theme.px(SHORTENED), titles.getOrDefault(at, 0))) : need;
        return new ColumnWish(Math.max(declared, need), needed.containsKey(at) ? least : declared);
    }

    private boolean isLong(int at, Column<?> column) {
        return column.mark().isEmpty()
                && column.bar().isEmpty()
                && !column.right()
                && needed.getOrDefault(at, 0) > theme.px(SENTENCE);
    }
}

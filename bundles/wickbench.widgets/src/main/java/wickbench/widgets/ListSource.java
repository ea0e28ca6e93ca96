package wickbench.widgets;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/** Rows that are all at hand. */
record ListSource<T>(List<T> all, List<Column<T>> columns) implements RowSource<T> {

    @Override
    public Slice<T> rows(Ask ask, Optional<T> after, int size) {
        List<T> rows = asked(ask);
        int from = after.map(row -> rows.indexOf(row) + 1).orElse(0);
        int to = Math.min(rows.size(), from + size);
        return new Slice<>(rows.subList(from, to), to < rows.size());
    }

    @Override
    public OptionalLong count(Ask ask) {
        return OptionalLong.of(asked(ask).size());
    }

    private List<T> asked(Ask ask) {
        String wanted = ask.filter().strip().toLowerCase(Locale.ROOT);
        List<T> rows = all.stream()
                .filter(row -> wanted.isEmpty() || says(row, wanted))
                .toList();
        return ask.sort()
                .map(sort -> rows.stream().sorted(order(sort)).toList())
                .orElse(rows);
    }

    private boolean says(T row, String wanted) {
        return columns.stream()
                .anyMatch(column ->
                        column.text().apply(row).toLowerCase(Locale.ROOT).contains(wanted));
    }

    private Comparator<T> order(Sort sort) {
        Column<T> by = columns.stream()
                .filter(column -> column.id().equals(sort.column()))
                .findFirst()
                .orElseThrow();
        Comparator<T> order = Comparator.comparing(by.text(), NumbersInWords::compare);
        return sort.ascending() ? order : order.reversed();
    }
}

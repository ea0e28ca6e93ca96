package wickbench.widgets;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import wickbench.api.report.FormulaGuard;

/** Rows as other programs take them from the clipboard: a line each, cells parted by tabs. */
final class TabText {
    private static final Pattern BREAKS = Pattern.compile("[\\t\\r\\n]+");

    private TabText() {}

    static <T> String of(List<T> rows, List<Column<T>> columns) {
        return rows.stream().map(row -> line(row, columns)).collect(Collectors.joining("\n"));
    }

    private static <T> String line(T row, List<Column<T>> columns) {
        return columns.stream()
                .map(column -> FormulaGuard.guarded(
                        BREAKS.matcher(column.text().apply(row)).replaceAll(" ")))
                .collect(Collectors.joining("\t"));
    }
}

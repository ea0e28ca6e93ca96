package wickbench.index;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.index.Rows;

/** Everything that stands in a view's tables, as sorted lines. */
final class Dump {
    private Dump() {}

    static List<String> of(H2Index index, String... views) {
        List<String> lines = new ArrayList<>();
        for (String view : views) {
            lines.addAll(index.read(view, rows -> of(rows, view)));
        }
        return lines;
    }

    private static List<String> of(Rows rows, String view) {
        List<String> lines = new ArrayList<>();
        List<String> tables = rows.read(
                "select table_name as t from information_schema.tables where table_schema = ? order by table_name",
                row -> row.text("t"),
                view);
        for (String table : tables) {
            List<String> columns = rows.read(
                    "select column_name as c from information_schema.columns where table_schema = ? and table_name = ?"
                            + " order by ordinal_position",
                    row -> row.text("c"),
                    view,
                    table);
            String all = columns.stream()
                    .map(column -> "coalesce(cast(" + column + " as varchar), '-')")
                    .collect(Collectors.joining(" || '|' || "));
            lines.addAll(rows.read(
                    "select " + all + " as line from " + table + " order by line",
                    row -> view + "." + table + " " + row.text("line")));
        }
        return lines;
    }
}

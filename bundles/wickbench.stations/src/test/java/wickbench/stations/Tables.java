package wickbench.stations;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.index.Index;
import wickbench.api.index.Rows;

/** Everything that stands in views' tables, as sorted lines. */
final class Tables {
    private Tables() {}

    static List<String> of(Index index, List<String> views) {
        List<String> lines = new ArrayList<>();
        views.forEach(view -> lines.addAll(index.read(view, rows -> of(rows, view))));
        return lines;
    }

    private static List<String> of(Rows rows, String view) {
        List<String> lines = new ArrayList<>();
        List<String> tables = rows.read(
                "select table_name as t from information_schema.tables where table_schema = ? order by table_name",
                row -> row.text("t"),
                view);
        tables.forEach(table -> lines.addAll(rows.read(
                "select " + columns(rows, view, table) + " as line from " + table + " order by line",
                row -> view + "." + table + " " + row.text("line"))));
        return lines;
    }

    private static String columns(Rows rows, String view, String table) {
        return rows
                .read(
                        "select column_name as c from information_schema.columns where table_schema = ? and table_name"
                                + " = ? order by ordinal_position",
                        row -> row.text("c"),
                        view,
                        table)
                .stream()
                .map(column -> "coalesce(cast(" + column + " as varchar), '-')")
                .collect(Collectors.joining(" || '|' || "));
    }
}

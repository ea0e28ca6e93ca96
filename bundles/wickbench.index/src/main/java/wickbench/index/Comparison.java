package wickbench.index;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import wickbench.api.index.Difference.Kind;

/**
 * Holds the tables of one view against the same tables made anew.
 *
 * <p>Each table is first summed up, whatever the order of its rows; only where the sums differ are rows looked for.
 */
final class Comparison {
    private final String view;
    private final Differences found;

    Comparison(String view, Differences found) {
        this.view = view;
        this.found = found;
    }

    void compare(ViewTables kept, ViewTables made) {
        List<String> there = kept.look(session -> tables(session, view));
        List<String> asked = made.look(session -> tables(session, view));
        TreeSet<String> all = new TreeSet<>(there);
        all.addAll(asked);
        for (String table : all) {
            if (!asked.contains(table)) {
                found.add(view, table, "*", Kind.ADDED);
            } else if (!there.contains(table)) {
                found.add(view, table, "*", Kind.MISSING);
            } else if (!kept.look(session -> sum(session, table)).equals(made.look(session -> sum(session, table)))) {
                rows(table, kept, made);
            }
        }
    }

    private static List<String> tables(Session session, String view) {
        return session.read(
                "select table_name as t from information_schema.tables where table_schema = ? order by table_name",
                row -> row.text("t"),
                view);
    }

    private static RowSum sum(Session session, String table) {
        RowSum sum = new RowSum();
        session.each(table, sum::add);
        return sum;
    }

    private void rows(String table, ViewTables kept, ViewTables made) {
        Map<String, Kind> kinds = new TreeMap<>();
        List<Integer> key = made.look(session -> key(session, table));
        RowSum madeRows = new RowSum().remembering();
        made.look(session -> each(session, table, madeRows::add));
        RowSum keptRows = new RowSum().remembering();
        kept.look(session -> each(session, table, row -> {
            keptRows.add(row);
            if (!madeRows.holds(row)) {
                kinds.put(name(row, key), Kind.ADDED);
            }
        }));
        made.look(session -> each(session, table, row -> {
            if (!keptRows.holds(row)) {
                kinds.merge(name(row, key), Kind.MISSING, (added, missing) -> Kind.CHANGED);
            }
        }));
        kinds.forEach((row, kind) -> found.add(view, table, row, kind));
    }

    private static Session each(Session session, String table, java.util.function.Consumer<String[]> reader) {
        session.each(table, reader);
        return session;
    }

    /** Returns where the columns of the primary key stand; all columns where there is none. */
    private List<Integer> key(Session session, String table) {
        List<String> columns = session.read(
                "select column_name as c from information_schema.columns where table_schema = ? and table_name = ?"
                        + " order by ordinal_position",
                row -> row.text("c"),
                view,
                table);
        List<String> key = session.read(
                "select u.column_name as c from information_schema.key_column_usage u join"
                        + " information_schema.table_constraints t on t.constraint_name = u.constraint_name"
                        + " and t.constraint_schema = u.constraint_schema where t.constraint_type = 'PRIMARY KEY'"
                        + " and u.table_schema = ? and u.table_name = ? order by u.ordinal_position",
                row -> row.text("c"),
                view,
                table);
        List<Integer> places = new ArrayList<>();
        for (String column : key.isEmpty() ? columns : key) {
            places.add(columns.indexOf(column));
        }
        return places;
    }

    private static String name(String[] row, List<Integer> key) {
        return String.join(
                ", ",
                key.stream()
                        .map(at -> row[at].equals(Session.NOTHING) ? "-" : row[at].substring(1))
                        .toList());
    }
}

package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.index.Rows;
import wickbench.ledger.ResultRow;
import wickbench.ledger.Sort;
import wickbench.ledger.SortColumn;

/**
 * A page of results in SQL.
 *
 * <p>The order begins with the column that the filter fixes, so that one index serves both; and a page that follows a row is
 * asked for in stretches ({@code a = ? and b > ?}, then {@code a > ?}), each of which is one range of that index. A single
 * condition with {@code or} would read every row before the page again.
 */
final class Question {
    /** Rows as {@link Shape} reads them. */
    static final String SELECT = "select statement.*, " + DoubtTables.OPEN + " as in_doubt, " + ReviewTable.WAITS
            + " as waits from statement where ";

    private final List<Condition> conditions;
    private final Sort sort;

    Question(List<Condition> conditions, Sort sort) {
        this.conditions = conditions;
        this.sort = sort;
    }

    /** Reads up to {@code size} rows after one, or from the beginning. */
    List<ResultRow> rows(Rows rows, Optional<ResultRow> after, int size) {
        if (after.isEmpty()) {
            return read(rows, conditions, size);
        }
        List<ResultRow> found = new ArrayList<>();
        for (List<Condition> stretch : stretches(after.get())) {
            if (found.size() < size) {
                found.addAll(read(rows, stretch, size - found.size()));
            }
        }
        return found;
    }

    private List<ResultRow> read(Rows rows, List<Condition> asked, int size) {
        List<Object> values =
                asked.stream().flatMap(each -> each.values().stream()).collect(Collectors.toList());
        values.add(size);
        return rows.read(
                SELECT + where(asked) + " order by " + order(asked) + " fetch first ? rows only",
                Shape::row,
                values.toArray());
    }

    static String where(List<Condition> asked) {
        return Stream.concat(Stream.of("counts"), asked.stream().map(Condition::sql))
                .collect(Collectors.joining(" and "));
    }

    private String order(List<Condition> asked) {
        String direction = sort.ascending() ? "" : " desc";
        List<String> columns = new ArrayList<>(keys().keySet());
        asked.stream()
                .flatMap(each -> each.column().stream())
                .filter(column -> !columns.contains(column))
                .findFirst()
                .ifPresent(column -> columns.add(0, column));
        return columns.stream().map(column -> column + direction).collect(Collectors.joining(", "));
    }

    private List<List<Condition>> stretches(ResultRow after) {
        List<Map.Entry<String, Key>> keys = List.copyOf(keys().entrySet());
        List<List<Condition>> stretches = new ArrayList<>();
        for (int fixed = keys.size() - 1; fixed >= 0; fixed--) {
            List<Condition> stretch = new ArrayList<>(conditions);
            for (Map.Entry<String, Key> key : keys.subList(0, fixed)) {
                stretch.add(Condition.equal(key.getKey(), key.getValue().of(after)));
            }
            Map.Entry<String, Key> moving = keys.get(fixed);
            String past = moving.getKey() + (sort.ascending() ? " > ?" : " < ?");
            stretch.add(Condition.of(past, moving.getValue().of(after)));
            stretches.add(stretch);
        }
        return stretches;
    }

    /** The value of a column in a row. */
    private interface Key {
        Object of(ResultRow row);
    }

    private Map<String, Key> keys() {
        Map<String, Key> keys = new LinkedHashMap<>();
        if (sort.column() != SortColumn.HAPPENED) {
            keys.put(sort.column().code(), row -> text(row, sort.column()));
        }
        keys.put("happened", ResultRow::happened);
        keys.put("first_station", row -> row.ref().station().value());
        keys.put("first_seq", row -> row.ref().seq());
        return keys;
    }

    private static String text(ResultRow row, SortColumn column) {
        return switch (column) {
            case SAMPLE -> row.sample();
            case PLACE -> row.place();
            case LINE -> row.line().orElse("");
            case BATCH -> row.batch().orElse("");
            case METHOD -> row.method().id().value();
            case TARGET -> row.target();
            case LOT -> row.lot().value();
            case OPERATOR -> row.operator().value();
            case OUTCOME, HAPPENED -> throw new IllegalArgumentException(column + " is no text");
        };
    }
}

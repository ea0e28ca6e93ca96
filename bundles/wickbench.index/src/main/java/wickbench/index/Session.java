package wickbench.index;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import wickbench.api.index.Row;
import wickbench.api.index.Rows;

/** One connection with its prepared statements, which are kept: taking in entries repeats few of them very often. */
final class Session implements Rows, AutoCloseable {
    static final String NOTHING = "";

    private static final int KEPT = 64;

    private final Connection connection;
    private final boolean mayWrite;
    private final boolean leftOpen;
    private final Map<String, PreparedStatement> prepared = new LinkedHashMap<>(KEPT, 0.75f, true);
    private final Map<String, Map<String, Integer>> columns = new HashMap<>();

    /** @param leftOpen whether the file may hold what a program that was killed had not finished */
    Session(Connection connection, boolean mayWrite, boolean leftOpen) {
        this.connection = connection;
        this.mayWrite = mayWrite;
        this.leftOpen = leftOpen;
    }

    @Override
    public int write(String sql, Object... values) {
        if (!mayWrite) {
            throw new IllegalStateException("a read changes nothing: " + sql);
        }
        try {
            return bound(sql, values).executeUpdate();
        } catch (SQLException e) {
            throw SqlFailure.ofChange(sql, e, leftOpen);
        }
    }

    @Override
    public <T> List<T> read(String sql, Function<Row, T> shape, Object... values) {
        try (ResultSet found = bound(sql, values).executeQuery()) {
            List<T> rows = new ArrayList<>();
            Row row = new SqlRow(found, columns(sql, found));
            while (found.next()) {
                rows.add(shape.apply(row));
            }
            return rows;
        } catch (SQLException e) {
            throw SqlFailure.of(sql, e);
        }
    }

    private Map<String, Integer> columns(String sql, ResultSet found) throws SQLException {
        Map<String, Integer> known = columns.get(sql);
        if (known == null) {
            known = SqlRow.columns(found);
            columns.put(sql, known);
        }
        return known;
    }

    /** Hands over every row of a table, a text for each column: {@link #NOTHING}, or the value behind an equals sign. */
    void each(String table, Consumer<String[]> reader) {
        String sql = "select * from " + table;
        // one row after another: a table may be larger than the memory
        run("set lazy_query_execution 1");
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet found = statement.executeQuery()) {
            int width = found.getMetaData().getColumnCount();
            while (found.next()) {
                String[] row = new String[width];
                for (int at = 0; at < width; at++) {
                    String value = found.getString(at + 1);
                    row[at] = value == null ? NOTHING : "=" + value;
                }
                reader.accept(row);
            }
        } catch (SQLException e) {
            throw SqlFailure.of(sql, e);
        } finally {
            run("set lazy_query_execution 0");
        }
    }

    /** Runs a statement that is needed once. */
    void run(String sql) {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw SqlFailure.of(sql, e);
        }
    }

    void commit() {
        try {
            connection.commit();
        } catch (SQLException e) {
            throw SqlFailure.of("commit", e);
        }
    }

    void rollback() {
        try {
            connection.rollback();
        } catch (SQLException e) {
            throw SqlFailure.of("rollback", e);
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException e) {
            throw SqlFailure.of("close", e);
        }
    }

    private PreparedStatement bound(String sql, Object... values) throws SQLException {
        PreparedStatement statement = statement(sql);
        for (int i = 0; i < values.length; i++) {
            statement.setObject(i + 1, plain(values[i]));
        }
        return statement;
    }

    private PreparedStatement statement(String sql) throws SQLException {
        PreparedStatement known = prepared.get(sql);
        if (known != null) {
            return known;
        }
        if (prepared.size() == KEPT) {
            String eldest = prepared.keySet().iterator().next();
            columns.remove(eldest);
            prepared.remove(eldest).close();
        }
        PreparedStatement made = connection.prepareStatement(sql);
        prepared.put(sql, made);
        return made;
    }

    private static Object plain(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(Session::plain).orElse(null);
        }
        return value instanceof Instant instant ? instant.atOffset(ZoneOffset.UTC) : value;
    }
}

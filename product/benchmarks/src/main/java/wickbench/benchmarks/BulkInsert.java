package wickbench.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Inserts rows that lie in memory into the same tables with the same keys, a thousand a batch and a transaction. */
final class BulkInsert implements Contestant {
    private static final int BATCH = 1_000;

    private final Path folder;
    private final List<String> made;
    private final Map<String, List<Object[]>> rows;
    private int lap;

    private BulkInsert(Path folder, List<String> made, Map<String, List<Object[]>> rows) {
        this.folder = folder;
        this.made = made;
        this.rows = rows;
    }

    /** Takes all that a database holds: how its tables were made, and their rows. */
    static BulkInsert copying(Path database, Path folder) throws Exception {
        try (Connection from = IndexFile.open(database)) {
            List<String> made = new ArrayList<>();
            Map<String, List<Object[]>> rows = new LinkedHashMap<>();
            try (Statement statement = from.createStatement();
                    ResultSet script = statement.executeQuery("script nodata nopasswords nosettings")) {
                while (script.next()) {
                    made.add(script.getString(1));
                }
            }
            made.removeIf(sql -> sql.startsWith("CREATE USER"));
            for (String table : tables(from)) {
                rows.put(table, rows(from, table));
            }
            return new BulkInsert(Files.createDirectories(folder), made, rows);
        }
    }

    @Override
    public String name() {
        return "raw H2 bulk insert of the same rows";
    }

    @Override
    public double lap() throws Exception {
        Path file = folder.resolve("lap" + lap++);
        long count = rows.values().stream().mapToLong(List::size).sum();
        return Timed.perSecond(count, () -> {
            try (Connection connection = DriverManager.getConnection("jdbc:h2:" + file.toAbsolutePath())) {
                make(connection);
                connection.setAutoCommit(false);
                for (Map.Entry<String, List<Object[]>> table : rows.entrySet()) {
                    insert(connection, table.getKey(), table.getValue());
                }
            }
        });
    }

    private void make(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            for (String sql : made) {
                statement.execute(sql);
            }
        }
    }

    private static void insert(Connection connection, String table, List<Object[]> all) throws SQLException {
        if (all.isEmpty()) {
            return;
        }
        String places = String.join(", ", Collections.nCopies(all.get(0).length, "?"));
        try (PreparedStatement next =
                connection.prepareStatement("insert into " + table + " values (" + places + ")")) {
            int waiting = 0;
            for (Object[] row : all) {
                for (int i = 0; i < row.length; i++) {
                    next.setObject(i + 1, row[i]);
                }
                next.addBatch();
                if (++waiting == BATCH) {
                    next.executeBatch();
                    connection.commit();
                    waiting = 0;
                }
            }
            next.executeBatch();
            connection.commit();
        }
    }

    private static List<String> tables(Connection from) throws SQLException {
        List<String> tables = new ArrayList<>();
        try (Statement statement = from.createStatement();
                ResultSet found =
                        statement.executeQuery("select table_schema, table_name from information_schema.tables"
                                + " where table_type = 'BASE TABLE' and table_schema <> 'INFORMATION_SCHEMA'")) {
            while (found.next()) {
                tables.add('"' + found.getString(1) + "\".\"" + found.getString(2) + '"');
            }
        }
        return tables;
    }

    private static List<Object[]> rows(Connection from, String table) throws SQLException {
        List<Object[]> rows = new ArrayList<>();
        try (Statement statement = from.createStatement();
                ResultSet found = statement.executeQuery("select * from " + table)) {
            int columns = found.getMetaData().getColumnCount();
            while (found.next()) {
                Object[] row = new Object[columns];
                for (int i = 0; i < columns; i++) {
                    row[i] = found.getObject(i + 1);
                }
                rows.add(row);
            }
        }
        return rows;
    }
}

package wickbench.benchmarks;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/** Commits the same line as a row of a database, each on the disk before the next. */
final class SqlCommits implements Contestant {
    private final String name;
    private final Connection connection;
    private final List<String> afterEach;
    private final String line;
    private final int count;

    private SqlCommits(String name, String url, List<String> first, List<String> afterEach, String line, int count)
            throws SQLException {
        this.name = name;
        this.afterEach = afterEach;
        this.line = line;
        this.count = count;
        connection = DriverManager.getConnection(url);
        for (String sql : first) {
            run(sql);
        }
        run("create table entry (seq integer primary key, line varchar(4000) not null)");
        connection.setAutoCommit(false);
    }

    /** H2 makes a commit durable only by this statement after it. */
    static SqlCommits h2(Path path, String line, int count) throws SQLException {
        return new SqlCommits(
                "H2, CHECKPOINT SYNC",
                "jdbc:h2:" + path.toAbsolutePath(),
                List.of(),
                List.of("CHECKPOINT SYNC"),
                line,
                count);
    }

    static SqlCommits sqlite(Path path, String line, int count) throws SQLException {
        List<String> durable = List.of("pragma journal_mode = wal", "pragma synchronous = full");
        return new SqlCommits("SQLite, WAL and FULL", "jdbc:sqlite:" + path, durable, List.of(), line, count);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double lap() throws Exception {
        try (PreparedStatement next = connection.prepareStatement(
                "insert into entry (seq, line) values ((select coalesce(max(seq), 0) + 1 from entry), ?)")) {
            return Timed.perSecond(count, () -> {
                for (int i = 0; i < count; i++) {
                    next.setString(1, line);
                    next.executeUpdate();
                    connection.commit();
                    for (String sql : afterEach) {
                        run(sql);
                    }
                }
            });
        }
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}

package wickbench.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.stream.Stream;

/** Somebody who changes the index behind the program with a database tool, and takes the check sums of its pages away. */
public final class DatabaseTool {
    private DatabaseTool() {}

    /**
     * Changes one row.
     *
     * @param home whose index is closed
     */
    public static void change(Path home, String sql) throws IOException, SQLException {
        change(home, sql, 1);
    }

    /**
     * Changes as many rows as are told.
     *
     * @param home whose index is closed
     */
    public static void change(Path home, String sql, int rows) throws IOException, SQLException {
        Path file;
        // below the index only: beside it a journal may still place its checkpoint, and a walk does not bear a file
        // that goes away
        try (Stream<Path> files = Files.walk(home.resolve("index"))) {
            file = files.filter(path -> path.toString().endsWith(".mv.db"))
                    .findFirst()
                    .orElseThrow();
        }
        Files.delete(Path.of(file + ".sums"));
        String url = "jdbc:h2:" + file.toString().replace(".mv.db", "");
        try (Connection tool = DriverManager.getConnection(url);
                Statement statement = tool.createStatement()) {
            assertThat(statement.executeUpdate(sql)).isEqualTo(rows);
        }
    }
}

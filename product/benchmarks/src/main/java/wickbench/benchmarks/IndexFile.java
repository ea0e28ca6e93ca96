package wickbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.stream.Stream;

/** The database file of an index, opened past the program. */
final class IndexFile {
    private static final String ENDING = ".mv.db";

    private IndexFile() {}

    /** Returns the file of a home whose index is closed. */
    static Path below(Path home) throws IOException {
        try (Stream<Path> files = Files.walk(home.resolve("index"))) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .findFirst()
                    .orElseThrow();
        }
    }

    static Connection open(Path file) throws SQLException {
        String path = file.toAbsolutePath().toString();
        return DriverManager.getConnection(
                "jdbc:h2:" + path.substring(0, path.length() - ENDING.length()) + ";CACHE_SIZE=131072");
    }
}

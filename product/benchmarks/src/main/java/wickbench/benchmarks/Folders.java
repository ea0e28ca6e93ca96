package wickbench.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Whole folders. */
final class Folders {
    private Folders() {}

    /** Copies one as it is to where nothing is. */
    static void copy(Path from, Path to) throws IOException {
        for (Path path : all(from)) {
            Files.copy(path, to.resolve(from.relativize(path)));
        }
    }

    /** Deletes one, if it is there. */
    static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            for (Path path :
                    all(folder).stream().sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }

    private static List<Path> all(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.toList();
        }
    }
}

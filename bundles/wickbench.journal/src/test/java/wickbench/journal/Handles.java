package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files that this program has open, where the system tells. */
final class Handles {
    private static final Path ALL = Path.of("/proc/self/fd");

    private Handles() {}

    /** Returns the names of those below a folder. */
    static List<String> below(Path folder) throws IOException {
        if (!told()) {
            return List.of();
        }
        try (Stream<Path> handles = Files.list(ALL)) {
            return handles.map(Handles::target)
                    .filter(path -> path.startsWith(folder))
                    .map(path -> path.getFileName().toString())
                    .sorted()
                    .distinct()
                    .toList();
        }
    }

    static boolean told() {
        return Files.isDirectory(ALL);
    }

    /** Returns what a handle leads to; one that was closed meanwhile leads nowhere. */
    private static Path target(Path handle) {
        try {
            return Files.readSymbolicLink(handle);
        } catch (IOException e) {
            return ALL;
        }
    }
}

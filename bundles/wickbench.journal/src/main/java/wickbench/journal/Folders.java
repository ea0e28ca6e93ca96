package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.report.WholeFolder;

/** What must hold of a folder before something is written there. */
final class Folders {
    private Folders() {}

    /**
     * Refuses a folder that holds something.
     *
     * @param code of the refusal, and of its words
     */
    static void needEmpty(Path folder, String code) throws IOException {
        if (!new WholeFolder(folder).isFree()) {
            throw new Refusal(code, Say.words(code, folder));
        }
    }

    /** Refuses a home that holds more than the lock of a program that has ended. */
    static void needEmptyHome(Path home) throws IOException {
        if (!Files.isDirectory(home.resolve("lock")) && only(home, "lock")) {
            Files.delete(home.resolve("lock"));
        }
        needEmpty(home, "restore.folder");
    }

    private static boolean only(Path folder, String name) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString()).toList().equals(List.of(name));
        }
    }
}

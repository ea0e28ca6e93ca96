package wickbench.reading;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Files with what is expected. */
final class Golden {
    private Golden() {}

    static String text(String name) {
        try (InputStream in = Golden.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the rows below the header, cut at commas, blanks trimmed. */
    static List<List<String>> rows(String name) {
        return text(name)
                .lines()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .skip(1)
                .map(line -> List.of(line.trim().split("\\s*,\\s*", -1)))
                .toList();
    }

    /** Returns a file of the documentation, from the root of the sources. */
    static String docs(String name) {
        try {
            return Files.readString(docsFolder().resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Path docsFolder() {
        return Path.of("..", "..", "docs").toAbsolutePath().normalize();
    }
}

package wickbench.api.words;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;

/** The language chosen on the desk of a home, in its file {@code desk/language}: a code and a line end. */
public final class KeptLanguage {
    private final Path file;

    public KeptLanguage(Path home) {
        file = home.resolve("desk").resolve("language");
    }

    /** Returns the language kept; empty when none is, or one that is not installed any more. */
    public Optional<Language> read() {
        try {
            return Files.exists(file)
                    ? Language.find(
                            Files.readString(file, StandardCharsets.ISO_8859_1).strip())
                    : Optional.empty();
        } catch (IOException e) {
            // like the layout beside it: never worth a refusal to start
            return Optional.empty();
        }
    }

    /** Keeps a language, or with none that of the machine. */
    public void write(Optional<Language> language) {
        try {
            if (language.isEmpty()) {
                Files.deleteIfExists(file);
                return;
            }
            Files.createDirectories(file.getParent());
            Path side = file.resolveSibling("language.part");
            Files.writeString(side, language.get().code() + "\n", StandardCharsets.UTF_8);
            Files.move(side, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

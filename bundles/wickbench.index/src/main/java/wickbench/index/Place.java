package wickbench.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import wickbench.api.words.Words;

/** Where the index files are: in the home, or elsewhere while the home may not be written; for one thread at a time. */
final class Place {
    private static final Words WORDS = Words.of(Place.class, "index");
    private final Path wanted;
    private Optional<Path> elsewhere = Optional.empty();

    Place(Path wanted) {
        this.wanted = wanted.toAbsolutePath();
    }

    /** Returns the folder; the first time that it is another one, says so. */
    Path folder(Consumer<String> notice) {
        if (elsewhere.isEmpty() && !writable(wanted)) {
            try {
                Path made = Files.createTempDirectory("wickbench-index");
                elsewhere = Optional.of(made);
                notice.accept(WORDS.get("index.elsewhere", wanted, made));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return elsewhere.orElse(wanted);
    }

    private static boolean writable(Path folder) {
        Path there = folder;
        while (!Files.exists(there)) {
            there = there.getParent();
        }
        return Files.isWritable(there);
    }

    /** Removes what was made elsewhere. */
    void leave() {
        elsewhere.ifPresent(H2File::delete);
        elsewhere = Optional.empty();
    }
}

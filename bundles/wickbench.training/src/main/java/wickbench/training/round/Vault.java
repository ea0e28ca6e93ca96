package wickbench.training.round;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import wickbench.api.json.Fields;
import wickbench.api.json.JsonReader;
import wickbench.api.report.WholeFile;
import wickbench.training.RoundKey;

/**
 * The keys of rounds that are not closed, in files {@code training/ROUND.key.json} of the station that opened them.
 *
 * <p>The journal holds only their hash meanwhile. Who may read the station's files may read them: the page and the commands show
 * nobody a key, and the file is its owner's alone.
 */
final class Vault {
    private final Path folder;

    Vault(Path home) {
        folder = home.resolve("training");
    }

    void keep(RoundKey key) {
        byte[] text = key.json().canonical().getBytes(StandardCharsets.UTF_8);
        try {
            Files.createDirectories(folder);
            new WholeFile(file(key.round())).write(bytes -> {
                bytes.write(text);
                return true;
            });
            shut(file(key.round()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void shut(Path file) throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
    }

    /** Returns the key as it lies there; empty when this station did not open the round, or the file is lost. */
    Optional<RoundKey> read(String round) {
        Path file = file(round);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            String name = file.getFileName().toString();
            return Optional.of(JsonReader.readObject(name, Files.readString(file))
                    .map(body -> RoundJson.key(Fields.of(name, body)))
                    .orRefuse());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Takes the file away once the key stands in the journal, or was never committed to. */
    void drop(String round) {
        try {
            Files.deleteIfExists(file(round));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path file(String round) {
        return folder.resolve(round + ".key.json");
    }
}

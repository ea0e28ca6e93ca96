package wickbench.people;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HexFormat;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import wickbench.api.journal.Hash;
import wickbench.api.person.PersonId;

/**
 * The files {@code people/ID/HASH.json}, never changed: each change of a person is one file more.
 *
 * <p>The entry carries the hash of the file. The salt makes sure that nobody can find a name by trying names against that hash
 * once the file is gone.
 */
final class PersonFiles {
    private static final int SALT_BYTES = 32;
    private final Path folder;
    private final RandomGenerator chance;

    PersonFiles(Path home, RandomGenerator chance) {
        folder = home.resolve(SharedPeople.FOLDER);
        this.chance = chance;
    }

    /** Writes a file, and returns its hash once it is on the disk under its final name. */
    Hash keep(PersonId person, PersonFile content) {
        String text = content.json(salt()).canonical();
        Hash hash = Hash.ofContent(text);
        try {
            write(file(person, hash), text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return hash;
    }

    /** Returns 256 bits of chance in hexadecimal. */
    String salt() {
        byte[] salt = new byte[SALT_BYTES];
        chance.nextBytes(salt);
        return HexFormat.of().formatHex(salt);
    }

    /** Returns what the file says, unless it is gone or is not the one that the entry means. */
    Optional<PersonFile> read(PersonId person, Hash hash) {
        Path file = file(person, hash);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            byte[] content = Files.readAllBytes(file);
            return Hash.ofContent(content).equals(hash)
                    ? Optional.of(PersonFile.read("person file", new String(content, StandardCharsets.UTF_8))
                            .orRefuse())
                    : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes all files of a person; does nothing where there are none. */
    void remove(PersonId person) {
        Path own = folder.resolve(person.value());
        if (!Files.isDirectory(own)) {
            return;
        }
        try (Stream<Path> files = Files.list(own)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
            Files.delete(own);
            forceFolder(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path file(PersonId person, Hash hash) {
        return folder.resolve(person.value()).resolve(hash.hex() + ".json");
    }

    /** Writes beside, forces, renames; then forces the folders, since a rename is a change of theirs. */
    private void write(Path file, byte[] content) throws IOException {
        Files.createDirectories(file.getParent());
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        try (FileChannel channel = FileChannel.open(
                beside, StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(content);
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        forceFolder(file.getParent());
        forceFolder(folder);
        forceFolder(folder.getParent());
    }

    private static void forceFolder(Path folder) throws IOException {
        // Windows opens no channel on a folder and keeps renames in its own log
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }
}

package wickbench.parts.kept;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wickbench.api.json.JsonReader;
import wickbench.parts.archive.SetArchive;

/**
 * The folder {@code parts} of a home: the list, and the archives as they came.
 *
 * <p>An archive is put there before the list names it, and taken away after the list has let it go; each file is written beside and moved into its
 * place. So whenever the power fails, the list names nothing that is not there.
 */
final class KeptFolder {
    private static final String LIST = "sets.json";

    private final Path folder;

    KeptFolder(Path home) {
        folder = home.resolve("parts");
    }

    KeptList list() {
        Path file = folder.resolve(LIST);
        if (!Files.exists(file)) {
            return KeptList.none();
        }
        try {
            return JsonReader.readObject(file.toString(), Files.readString(file))
                    .then(object -> KeptList.read(file.toString(), object))
                    .orRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void put(KeptList list) {
        write(folder.resolve(LIST), (list.json().canonical() + "\n").getBytes(StandardCharsets.UTF_8));
        sweep(list);
    }

    void put(KeptArchive kept, SetArchive archive) {
        write(file(kept), archive.bytes());
    }

    Path file(KeptArchive kept) {
        return folder.resolve(kept.file());
    }

    /** Takes away archives that the list does not name. */
    private void sweep(KeptList list) {
        Set<String> named = list.archives().stream().map(KeptArchive::file).collect(Collectors.toSet());
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                if (!name.equals(LIST) && !named.contains(name)) {
                    Files.delete(file);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(Path file, byte[] bytes) {
        Path beside = folder.resolve(file.getFileName() + ".new");
        try {
            Files.createDirectories(folder);
            try (FileChannel out = FileChannel.open(
                    beside,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.TRUNCATE_EXISTING,
                    StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    out.write(left);
                }
                out.force(true);
            }
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

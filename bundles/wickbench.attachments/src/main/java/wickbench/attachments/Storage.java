package wickbench.attachments;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Optional;
import wickbench.api.journal.Hash;

/**
 * The files {@code attachments/ab/abcd….bin}: each named by the SHA-256 of its bytes, never changed.
 *
 * <p>Taking one in: it is written aside and hashed on the way, forced, looked at, and only then moved to its name; then the
 * folders are forced, since a move is a change of theirs. A failure before the move leaves a file aside that means nothing.
 */
final class Storage {
    private static final int BUFFER = 1 << 16;
    private final Path folder;

    Storage(Path home) {
        folder = home.resolve("attachments");
    }

    /** A file written aside, and what it holds. */
    record Aside(Path path, Hash content, long size) {}

    /** Thrown when there are more bytes than may be. */
    static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Writes the bytes aside, at most so many. */
    Aside aside(InputStream in, long most) throws IOException {
        Files.createDirectories(folder);
        Path path = Files.createTempFile(folder, "new-", ".part");
        try (FileChannel out = FileChannel.open(path, StandardOpenOption.WRITE)) {
            MessageDigest digest = sha256();
            byte[] buffer = new byte[BUFFER];
            long size = 0;
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                size += read;
                if (size > most) {
                    throw new TooLarge();
                }
                digest.update(buffer, 0, read);
                write(out, ByteBuffer.wrap(buffer, 0, read));
            }
            out.force(true);
            return new Aside(path, Hash.of(digest.digest()), size);
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(path);
            throw e;
        }
    }

    /** Gives a file its name for good; one that is there already and whole stays. */
    void keep(Aside aside) throws IOException {
        Path file = file(aside.content());
        if (isWhole(aside.content())) {
            Files.delete(aside.path());
            return;
        }
        Files.createDirectories(file.getParent());
        Files.move(aside.path(), file, StandardCopyOption.ATOMIC_MOVE);
        forceFolder(file.getParent());
        forceFolder(folder);
        forceFolder(folder.getParent());
    }

    void drop(Aside aside) throws IOException {
        Files.deleteIfExists(aside.path());
    }

    boolean isThere(Hash content) {
        return Files.isRegularFile(file(content), LinkOption.NOFOLLOW_LINKS);
    }

    /** Reads the file again and tells whether its bytes are those of its name. */
    boolean isWhole(Hash content) throws IOException {
        if (!isThere(content)) {
            return false;
        }
        try (FileChannel channel = open(content)) {
            return proves(channel, content);
        }
    }

    /** Opens a file at its first byte; empty when its bytes are not those of its name. */
    Optional<InputStream> proved(Hash content) throws IOException {
        FileChannel channel = open(content);
        if (proves(channel, content)) {
            // the same open file that was proved, so that nobody can put another in its place between
            return Optional.of(Channels.newInputStream(channel.position(0)));
        }
        channel.close();
        return Optional.empty();
    }

    Path file(Hash content) {
        return folder.resolve(content.hex().substring(0, 2)).resolve(content.hex() + ".bin");
    }

    private FileChannel open(Hash content) throws IOException {
        return FileChannel.open(file(content), StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);
    }

    private static boolean proves(FileChannel channel, Hash content) throws IOException {
        MessageDigest digest = sha256();
        ByteBuffer buffer = ByteBuffer.allocate(BUFFER);
        while (channel.read(buffer) >= 0) {
            digest.update(buffer.flip());
            buffer.clear();
        }
        return Hash.of(digest.digest()).equals(content);
    }

    private static void write(FileChannel out, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            out.write(bytes);
        }
    }

    private static void forceFolder(Path folder) throws IOException {
        // Windows opens no channel on a folder and keeps moves in its own log
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

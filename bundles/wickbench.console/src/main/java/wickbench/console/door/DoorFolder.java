package wickbench.console.door;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;
import wickbench.api.check.Checked;

/**
 * The folder {@code door} of a home: the socket and its key, for nobody but the owner.
 *
 * <p>Where the file system knows no owners and permissions, as on Windows, the rights on the home decide.
 */
final class DoorFolder {
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> KEY_ONLY = PosixFilePermissions.fromString("rw-------");

    /** The smallest limit of the systems we know (macOS: 104 bytes with the closing zero; Linux: 108). */
    private static final int LONGEST_SOCKET_PATH = 103;

    private final Path folder;

    DoorFolder(Path home) {
        folder = home.toAbsolutePath().normalize().resolve("door");
    }

    /** Makes the folder, or takes the one that a holder before left behind; returns where the socket goes. */
    Path prepare() throws IOException {
        Files.createDirectories(folder);
        if (knowsOwners()) {
            Files.setPosixFilePermissions(folder, OWNER_ONLY);
        }
        if (!isOwners()) {
            throw new IOException(folder + " is not this user's alone");
        }
        Path socket = folder.resolve("socket");
        Files.deleteIfExists(socket);
        return fits(socket) ? socket : Files.createTempDirectory("wickbench").resolve("socket");
    }

    /** Writes the key aside and moves it, so that nobody reads half of one. */
    void keep(DoorKey key) throws IOException {
        Path aside = folder.resolve("key.new");
        Files.deleteIfExists(aside);
        Files.createFile(aside, keyOnly());
        Files.writeString(aside, key.line(), StandardCharsets.UTF_8, StandardOpenOption.WRITE);
        Files.move(aside, key(), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Returns the key, unless there is none or another user had a hand in it. */
    Optional<DoorKey> find() throws IOException {
        if (!Files.isRegularFile(key(), LinkOption.NOFOLLOW_LINKS) || !isOwners() || !isOwn(key(), KEY_ONLY)) {
            return Optional.empty();
        }
        Checked<DoorKey> read = DoorKey.read(key().toString(), Files.readString(key()));
        return read instanceof Checked.Good<DoorKey> good ? Optional.of(good.value()) : Optional.empty();
    }

    /** Takes everything away; the socket may lie elsewhere, in a folder of its own. */
    void clear(Path socket) throws IOException {
        Files.deleteIfExists(key());
        Files.deleteIfExists(socket);
        Files.deleteIfExists(socket.getParent());
        Files.deleteIfExists(folder);
    }

    Path key() {
        return folder.resolve("key.json");
    }

    private static boolean fits(Path socket) {
        return socket.toString().getBytes(StandardCharsets.UTF_8).length <= LONGEST_SOCKET_PATH;
    }

    private boolean isOwners() throws IOException {
        return isOwn(folder, OWNER_ONLY);
    }

    private boolean isOwn(Path path, Set<PosixFilePermission> most) throws IOException {
        if (!knowsOwners()) {
            return true;
        }
        PosixFileAttributes found = Files.readAttributes(path, PosixFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        return !found.isSymbolicLink()
                && most.containsAll(found.permissions())
                && found.owner().getName().equals(user());
    }

    /** Returns the name of the user who runs this program. */
    static String user() {
        return ProcessHandle.current().info().user().orElseGet(() -> System.getProperty("user.name"));
    }

    private boolean knowsOwners() {
        return folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    private FileAttribute<?>[] keyOnly() {
        return knowsOwners()
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(KEY_ONLY)}
                : new FileAttribute<?>[0];
    }
}

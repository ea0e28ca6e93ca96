package wickbench.api.report;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A folder that is there whole or not at all: it is filled beside its place, forced to the disk, and given its name at the end.
 *
 * <p>The place must be free, see {@link #isFree()}. The side folder is {@code NAME.part-PID}, in the same file system, so that it
 * can be renamed; what goes wrong leaves neither.
 */
public record WholeFolder(Path folder) {

    /** What goes into it. */
    @FunctionalInterface
    public interface Content<T> {
        /** Fills the empty folder beside. */
        T fill(Path beside) throws IOException;
    }

    /** Tells whether nothing is lost by writing here: nothing is there, or an empty folder. */
    public boolean isFree() throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    /** Writes it, and returns what the content returned. */
    public <T> T write(Content<T> content) throws IOException {
        Path whole = folder.toAbsolutePath();
        Files.createDirectories(whole.getParent());
        Path beside = whole.resolveSibling(
                whole.getFileName() + ".part-" + ProcessHandle.current().pid());
        remove(beside);
        Files.createDirectory(beside);
        try {
            T done = content.fill(beside);
            settle(beside, whole);
            return done;
        } finally {
            remove(beside);
        }
    }

    private static void settle(Path beside, Path whole) throws IOException {
        List<Path> all;
        try (Stream<Path> paths = Files.walk(beside)) {
            all = paths.toList();
        }
        // a thread that was told to stop would close what it forces
        boolean told = Thread.interrupted();
        try {
            for (Path path : all) {
                force(path);
            }
            Files.deleteIfExists(whole);
            Files.move(beside, whole, StandardCopyOption.ATOMIC_MOVE);
            force(whole.getParent());
        } finally {
            if (told) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private static void force(Path path) throws IOException {
        boolean isFolder = Files.isDirectory(path);
        // elsewhere a folder cannot be opened, and the file system keeps names in its own log
        if (!isFolder || path.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel channel =
                    FileChannel.open(path, isFolder ? StandardOpenOption.READ : StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        }
    }

    /** Removes a folder with all that is in it, if it is there. */
    public static void remove(Path folder) throws IOException {
        if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            try (Stream<Path> paths = Files.walk(folder)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}

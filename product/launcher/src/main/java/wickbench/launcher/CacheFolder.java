package wickbench.launcher;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The disposable folder in which the framework of this one process keeps its state.
 *
 * <p>Every process has its own, so two programs that start together never meet, and an update never meets the state of an older version.
 * It is locked while in use and deleted at the end; what a killed process left behind is deleted by the next start.
 */
final class CacheFolder implements AutoCloseable {

    private static final String LOCK = "in-use";
    private static final String OURS = "run-" + ProcessHandle.current().pid() + "-";

    private final Path folder;
    private final FileChannel lock;

    private CacheFolder(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /** Where this user's programs keep what may be lost: {@code wickbench.cache} if set, else the XDG cache folder. */
    static Path ofUser() {
        String xdg = System.getenv("XDG_CACHE_HOME");
        Path caches = xdg == null || xdg.isBlank() ? Path.of(System.getProperty("user.home"), ".cache") : Path.of(xdg);
        String told = System.getProperty("wickbench.cache");
        return told == null ? caches.resolve("wickbench") : Path.of(told);
    }

    /** Makes a new folder below {@code parent} and clears away those that nobody holds any more. */
    static CacheFolder below(Path parent) throws IOException {
        Files.createDirectories(parent);
        // the parent's lock keeps another start from sweeping away a folder that is made but not yet locked
        try (var starting = open(parent.resolve(LOCK))) {
            starting.lock();
            sweep(parent);
            Path folder = Files.createTempDirectory(parent, OURS);
            FileChannel lock = open(folder.resolve(LOCK));
            lock.lock();
            return new CacheFolder(folder, lock);
        }
    }

    Path folder() {
        return folder;
    }

    @Override
    public void close() throws IOException {
        lock.close();
        delete(folder);
    }

    private static FileChannel open(Path file) throws IOException {
        return FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    }

    private static void sweep(Path parent) throws IOException {
        try (Stream<Path> children = Files.list(parent)) {
            for (Path abandoned : children.filter(CacheFolder::isAnothers).toList()) {
                if (isFree(abandoned)) {
                    delete(abandoned);
                }
            }
        }
    }

    /** Our own folders are never tried: to close a second channel on a file gives up the first one's lock. */
    private static boolean isAnothers(Path child) {
        return Files.isDirectory(child) && !child.getFileName().toString().startsWith(OURS);
    }

    private static boolean isFree(Path folder) throws IOException {
        try (var channel = open(folder.resolve(LOCK))) {
            return channel.tryLock() != null;
        }
    }

    private static void delete(Path folder) throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> all = Files.walk(folder)) {
            deepestFirst = all.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path path : deepestFirst) {
            Files.deleteIfExists(path);
        }
    }
}

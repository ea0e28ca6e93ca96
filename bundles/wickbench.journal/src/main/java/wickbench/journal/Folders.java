package wickbench.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;

/** Folders that are made beside the place they are for, and come there whole or not at all. */
final class Folders {
    private Folders() {}

    /**
     * Refuses a folder that holds something.
     *
     * @param code of the refusal, and of its words
     */
    static void needEmpty(Path folder, String code) throws IOException {
        if (Files.exists(folder) && (!Files.isDirectory(folder) || holdsSomething(folder))) {
            throw new Refusal(code, Say.words(code, folder));
        }
    }

    private static boolean holdsSomething(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isPresent();
        }
    }

    /** Makes an empty folder in the same file system, so that it can be renamed. */
    static Path beside(Path folder) throws IOException {
        Files.createDirectories(folder.getParent());
        return Files.createTempDirectory(folder.getParent(), folder.getFileName() + ".part-");
    }

    /** Forces everything to the disk, then gives the folder its name. */
    static void settle(Path beside, Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> paths = Files.walk(beside)) {
            all = paths.toList();
        }
        for (Path path : all) {
            force(path);
        }
        Files.deleteIfExists(folder);
        Files.move(beside, folder, StandardCopyOption.ATOMIC_MOVE);
        force(folder.getParent());
    }

    private static void force(Path path) throws IOException {
        boolean posix = path.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (Files.isDirectory(path)) {
            // elsewhere a folder cannot be opened, and the file system keeps names in its own log
            if (posix) {
                new RealDisk().forceFolder(path);
            }
        } else {
            try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        }
    }

    /** Removes a folder with all that is in it, if it is there. */
    static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> paths = Files.walk(folder)) {
                for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }
}

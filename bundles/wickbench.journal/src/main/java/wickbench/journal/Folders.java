package wickbench.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
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

    /** Refuses a home that holds more than the lock of a program that has ended. */
    static void needEmptyHome(Path home) throws IOException {
        if (!Files.isDirectory(home.resolve("lock")) && only(home, "lock")) {
            Files.delete(home.resolve("lock"));
        }
        needEmpty(home, "restore.folder");
    }

    private static boolean only(Path folder, String name) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.map(path -> path.getFileName().toString()).toList().equals(List.of(name));
        }
    }

    /** Lets nobody but its owner into a folder, where the file system knows owners. */
    static Path ownersOnly(Path folder) throws IOException {
        if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
        return folder;
    }

    private static boolean holdsSomething(Path folder) throws IOException {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isPresent();
        }
    }

    /** Makes an empty folder in the same file system, so that it can be renamed. */
    static Path beside(Path folder) throws IOException {
        Files.createDirectories(folder.getParent());
        long program = ProcessHandle.current().pid();
        Path beside = folder.resolveSibling(folder.getFileName() + ".part-" + program);
        remove(beside);
        return Files.createDirectory(beside);
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

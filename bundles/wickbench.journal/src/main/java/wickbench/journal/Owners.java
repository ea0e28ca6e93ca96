package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** Keeps files and folders for their owner, where the file system knows owners. */
final class Owners {
    private Owners() {}

    static boolean areKnown(Path path) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix");
    }

    /** Makes a file that only its owner may read. */
    static void makeFile(Path file) throws IOException {
        Files.createFile(file, areKnown(file) ? secret() : new FileAttribute<?>[0]);
    }

    private static FileAttribute<?>[] secret() {
        return new FileAttribute<?>[] {
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        };
    }

    /** Lets nobody but its owner into a folder. */
    static void closeFolder(Path folder) throws IOException {
        if (areKnown(folder)) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }
}

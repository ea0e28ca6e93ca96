package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;

/** All that the journal asks of a disk to change it; reading needs no door of its own. */
interface Disk {

    /** Makes one folder; one that is there already is good too. Does not force its parent. */
    void createFolder(Path folder) throws IOException;

    /** Opens a file to be locked; makes it when it is not there. */
    RandomAccessFile lockable(Path file) throws IOException;

    /** Opens a file to write at its end; makes it when it is not there, without forcing its folder. */
    Growing grow(Path file) throws IOException;

    /** Makes a file that only its owner may read, where the file system knows owners, and opens it. */
    Growing growSecret(Path file) throws IOException;

    /** Removes a file, which need not be there. */
    void remove(Path file) throws IOException;

    /** Gives a file the name of another one, which it replaces: at once or not at all. */
    void rename(Path from, Path to) throws IOException;

    /** Forces the names in a folder to the disk. */
    void forceFolder(Path folder) throws IOException;

    /** Makes a folder with its parents, so that it is still there after a power cut. */
    default void makeFolder(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        makeFolder(folder.getParent());
        createFolder(folder);
        forceFolder(folder.getParent());
    }

    /** Puts a file in place of an older one: whole and forced, or not at all. */
    default void place(Path file, byte[] content) throws IOException {
        Path beside = beside(file);
        remove(beside);
        fillAndMove(grow(beside), beside, file, content);
    }

    /** Like {@link #place}, readable by its owner only where the file system knows owners. */
    default void placeSecret(Path file, byte[] content) throws IOException {
        Path beside = beside(file);
        remove(beside);
        fillAndMove(growSecret(beside), beside, file, content);
    }

    private void fillAndMove(Growing growing, Path beside, Path file, byte[] content) throws IOException {
        try (growing) {
            growing.write(content);
            growing.force();
        }
        rename(beside, file);
        forceFolder(file.getParent());
    }

    private static Path beside(Path file) {
        return file.resolveSibling(file.getFileName() + ".new");
    }

    /** A file that grows at its end. */
    interface Growing extends Closeable {
        long length() throws IOException;

        void write(byte[] bytes) throws IOException;

        void force() throws IOException;

        void truncate(long length) throws IOException;
    }
}

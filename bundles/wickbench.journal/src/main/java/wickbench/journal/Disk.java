package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;

/** All that the journal asks of a disk to change it; reading needs no door of its own. */
interface Disk {

    /** Makes a folder with its parents, so that it is still there after a power cut. */
    void makeFolder(Path folder) throws IOException;

    /** Opens a file to be locked; makes it when it is not there. */
    RandomAccessFile lockable(Path file) throws IOException;

    /** Opens a file to write at its end; makes it when it is not there, without forcing its folder. */
    Growing grow(Path file) throws IOException;

    /** Forces the names in a folder to the disk. */
    void forceFolder(Path folder) throws IOException;

    /** Puts a file in place of an older one: whole and forced, or not at all. */
    void place(Path file, byte[] content) throws IOException;

    /** Like {@link #place}, readable by its owner only where the file system knows owners. */
    void placeSecret(Path file, byte[] content) throws IOException;

    /** A file that grows at its end. */
    interface Growing extends Closeable {
        long length() throws IOException;

        void write(byte[] bytes) throws IOException;

        void force() throws IOException;

        void truncate(long length) throws IOException;
    }
}

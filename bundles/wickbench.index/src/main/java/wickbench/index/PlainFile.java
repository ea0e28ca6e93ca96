package wickbench.index;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.file.Path;

/**
 * The bytes of a file, read and written on the thread that asks, one at a time.
 *
 * <p>Not a channel: one interrupted thread would close it under all others.
 */
final class PlainFile implements AutoCloseable {
    private final RandomAccessFile file;

    /** @param mode {@code r} or {@code rw} */
    PlainFile(Path path, String mode) throws IOException {
        file = new RandomAccessFile(path.toFile(), mode);
    }

    long size() throws IOException {
        return file.length();
    }

    /** Reads so many bytes; behind the end of the file stand zeros. */
    byte[] read(long position, int length) throws IOException {
        byte[] bytes = new byte[length];
        file.seek(position);
        int got = 0;
        int next = 0;
        while (next >= 0 && got < length) {
            got += next;
            next = file.read(bytes, got, length - got);
        }
        return bytes;
    }

    void write(long position, byte[] bytes) throws IOException {
        file.seek(position);
        file.write(bytes);
    }

    /** Cuts off what is behind so many bytes; a file with fewer stays as it is. */
    void cut(long size) throws IOException {
        if (size < file.length()) {
            file.setLength(size);
        }
    }

    void force() throws IOException {
        file.getFD().sync();
    }

    /** Locks the file as channels do, which an interrupt does not keep from it. */
    FileLock tryLock(long position, long size, boolean shared) throws IOException {
        return file.getChannel().tryLock(position, size, shared);
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}

package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.ClosedByInterruptException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The disk of the machine. */
final class RealDisk implements Disk {

    @Override
    public void createFolder(Path folder) throws IOException {
        try {
            Files.createDirectory(folder);
        } catch (FileAlreadyExistsException e) {
            if (!Files.isDirectory(folder)) {
                throw e;
            }
        }
    }

    @Override
    public RandomAccessFile lockable(Path file) throws IOException {
        return new RandomAccessFile(file.toFile(), "rw");
    }

    @Override
    public Growing grow(Path file) throws IOException {
        return new End(file);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        // elsewhere a folder cannot be opened, and the file system keeps names in its own log
        if (Owners.areKnown(folder)) {
            boolean interrupted = Thread.interrupted();
            try {
                forceChannel(folder);
            } finally {
                if (interrupted) {
                    Thread.currentThread().interrupt();
                }
            }
        }
    }

    private static void forceChannel(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (ClosedByInterruptException e) {
            // the thread was told to stop, which is no failure of the disk: force once more, then tell it again
            Thread.interrupted();
            forceChannel(folder);
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public Growing growSecret(Path file) throws IOException {
        Owners.makeFile(file);
        return new End(file);
    }

    @Override
    public void remove(Path file) throws IOException {
        Files.deleteIfExists(file);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** Not a channel: one interrupted thread would close it under all others. */
    private static final class End implements Growing {
        private final RandomAccessFile file;

        End(Path path) throws IOException {
            file = new RandomAccessFile(path.toFile(), "rw");
            file.seek(file.length());
        }

        @Override
        public long length() throws IOException {
            return file.length();
        }

        @Override
        public void write(byte[] bytes) throws IOException {
            file.write(bytes);
        }

        @Override
        public void force() throws IOException {
            file.getFD().sync();
        }

        @Override
        public void truncate(long length) throws IOException {
            file.setLength(length);
            file.seek(length);
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}

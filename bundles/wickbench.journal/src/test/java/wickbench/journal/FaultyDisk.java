package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.util.Arrays;

/** The real disk, made to fail where a test wants it to. */
final class FaultyDisk implements Disk {
    private final RealDisk real = new RealDisk();
    private boolean forces = true;
    private boolean writable = true;
    private int writesUntilFull = Integer.MAX_VALUE;
    private int forcesUntilFailure = Integer.MAX_VALUE;
    private boolean truncates = true;

    /** Leaves forcing to the operating system, for tests that kill nothing. */
    FaultyDisk unforced() {
        forces = false;
        return this;
    }

    /** A folder without the right to write; a test may be run by one whom no right stops. */
    FaultyDisk readOnly() {
        writable = false;
        return this;
    }

    /** Lets so many more writes through, then is full: the next write leaves half of its bytes. */
    FaultyDisk fullAfter(int writes) {
        writesUntilFull = writes;
        return this;
    }

    FaultyDisk withSpace() {
        return fullAfter(Integer.MAX_VALUE);
    }

    /** Fails one force after so many good ones; the next one would succeed, as after an error that the kernel forgot. */
    FaultyDisk forceFailsAfter(int good) {
        forcesUntilFailure = good;
        return this;
    }

    FaultyDisk withoutTruncate() {
        truncates = false;
        return this;
    }

    @Override
    public void createFolder(Path folder) throws IOException {
        real.createFolder(folder);
    }

    @Override
    public RandomAccessFile lockable(Path file) throws IOException {
        if (!writable) {
            throw new AccessDeniedException(file.toString());
        }
        return real.lockable(file);
    }

    @Override
    public Growing grow(Path file) throws IOException {
        return new Faulty(real.grow(file));
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        if (countForce()) {
            real.forceFolder(folder);
        }
    }

    @Override
    public Growing growSecret(Path file) throws IOException {
        return new Faulty(real.growSecret(file));
    }

    @Override
    public void remove(Path file) throws IOException {
        real.remove(file);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        real.rename(from, to);
    }

    private void countWrite() throws IOException {
        if (writesUntilFull-- <= 0) {
            writesUntilFull = 0;
            throw new IOException("No space left on device");
        }
    }

    private boolean countForce() throws IOException {
        if (forcesUntilFailure-- == 0) {
            throw new IOException("Input/output error");
        }
        return forces;
    }

    private final class Faulty implements Growing {
        private final Growing file;

        Faulty(Growing file) {
            this.file = file;
        }

        @Override
        public long length() throws IOException {
            return file.length();
        }

        @Override
        public void write(byte[] bytes) throws IOException {
            try {
                countWrite();
            } catch (IOException e) {
                file.write(Arrays.copyOf(bytes, bytes.length / 2));
                throw e;
            }
            file.write(bytes);
        }

        @Override
        public void force() throws IOException {
            if (countForce()) {
                file.force();
            }
        }

        @Override
        public void truncate(long length) throws IOException {
            if (!truncates) {
                throw new IOException("Input/output error");
            }
            file.truncate(length);
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}

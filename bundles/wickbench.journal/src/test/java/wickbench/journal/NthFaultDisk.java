package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.Arrays;

/** The real disk, on which one request of one sort fails, and those after it succeed. */
final class NthFaultDisk implements Disk {
    private final RealDisk real = new RealDisk();
    private final Sort sort;
    private final Fault fault;
    private int until = Integer.MAX_VALUE;
    private boolean fired;

    /** What is asked of a disk. */
    enum Sort {
        OPEN,
        WRITE,
        FORCE,
        TRUNCATE,
        FOLDER,
        RENAME,
        REMOVE,
        FORCE_FOLDER
    }

    /** How it fails. */
    enum Fault {
        ERROR {
            @Override
            void happen() throws IOException {
                throw new IOException("Input/output error");
            }
        },
        NO_MEMORY {
            @Override
            void happen() {
                throw new OutOfMemoryError("Java heap space");
            }
        };

        abstract void happen() throws IOException;
    }

    NthFaultDisk(Sort sort, Fault fault) {
        this.sort = sort;
        this.fault = fault;
    }

    /** Lets so many requests of the sort through from now on, then fails one. */
    void failAfter(int good) {
        until = good;
        fired = false;
    }

    void heal() {
        until = Integer.MAX_VALUE;
    }

    /** Tells whether the fault came. */
    boolean fired() {
        return fired;
    }

    private void ask(Sort asked) throws IOException {
        if (asked == sort && until-- == 0) {
            fired = true;
            fault.happen();
        }
    }

    @Override
    public void createFolder(Path folder) throws IOException {
        ask(Sort.FOLDER);
        real.createFolder(folder);
    }

    @Override
    public RandomAccessFile lockable(Path file) throws IOException {
        return real.lockable(file);
    }

    @Override
    public Growing grow(Path file) throws IOException {
        ask(Sort.OPEN);
        return new Faulty(real.grow(file));
    }

    @Override
    public Growing growSecret(Path file) throws IOException {
        ask(Sort.OPEN);
        return new Faulty(real.growSecret(file));
    }

    @Override
    public void remove(Path file) throws IOException {
        ask(Sort.REMOVE);
        real.remove(file);
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        ask(Sort.RENAME);
        real.rename(from, to);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        ask(Sort.FORCE_FOLDER);
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
                ask(Sort.WRITE);
            } catch (IOException | OutOfMemoryError e) {
                // a disk that refuses has often taken a part
                file.write(Arrays.copyOf(bytes, bytes.length / 2));
                throw e;
            }
            file.write(bytes);
        }

        @Override
        public void force() throws IOException {
            ask(Sort.FORCE);
        }

        @Override
        public void truncate(long length) throws IOException {
            ask(Sort.TRUNCATE);
            file.truncate(length);
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}

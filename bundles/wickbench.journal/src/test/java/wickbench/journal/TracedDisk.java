package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The real disk, which writes down every change that it is asked for; forcing is left out, for nothing is cut off here. */
final class TracedDisk implements Disk {
    private final RealDisk real = new RealDisk();
    private final List<Change> trace = new ArrayList<>();
    private final Map<Path, Integer> files = new HashMap<>();
    private int numbered;
    private int writesUntilFull = Integer.MAX_VALUE;

    /** Takes a folder as it stands, all of it on the disk. */
    static TracedDisk over(Path folder) throws IOException {
        TracedDisk disk = new TracedDisk();
        try (var paths = Files.walk(folder)) {
            paths.filter(Files::isRegularFile).sorted().forEach(path -> disk.files.put(path, disk.numbered++));
        }
        return disk;
    }

    /** Refuses one write after so many good ones, of which half gets through. */
    void fullAt(int write) {
        writesUntilFull = write;
    }

    List<Change> trace() {
        return trace;
    }

    /** Returns the number of each file there is, by its name. */
    Map<Path, Integer> numbers() {
        return Map.copyOf(files);
    }

    void say(Change said) {
        trace.add(said);
    }

    @Override
    public void createFolder(Path folder) throws IOException {
        boolean there = Files.exists(folder);
        real.createFolder(folder);
        if (!there) {
            trace.add(new Change.FolderMade(folder));
        }
    }

    @Override
    public RandomAccessFile lockable(Path file) throws IOException {
        return real.lockable(file);
    }

    @Override
    public Growing grow(Path file) throws IOException {
        return opened(file, real.grow(file));
    }

    @Override
    public Growing growSecret(Path file) throws IOException {
        return opened(file, real.growSecret(file));
    }

    private Growing opened(Path path, Growing growing) {
        int known = numbered;
        int number = files.computeIfAbsent(path, p -> numbered++);
        if (number == known) {
            trace.add(new Change.FileMade(path, number));
        }
        return new Traced(growing, number);
    }

    @Override
    public void remove(Path file) throws IOException {
        real.remove(file);
        if (files.remove(file) != null) {
            trace.add(new Change.Removed(file));
        }
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        real.rename(from, to);
        files.put(to, files.remove(from));
        trace.add(new Change.Renamed(from, to));
    }

    @Override
    public void forceFolder(Path folder) {
        trace.add(new Change.FolderForced(folder));
    }

    private final class Traced implements Growing {
        private final Growing file;
        private final int number;

        Traced(Growing file, int number) {
            this.file = file;
            this.number = number;
        }

        @Override
        public long length() throws IOException {
            return file.length();
        }

        @Override
        public void write(byte[] bytes) throws IOException {
            boolean full = writesUntilFull-- == 0;
            byte[] through = full ? Arrays.copyOf(bytes, bytes.length / 2) : bytes.clone();
            trace.add(new Change.Wrote(number, file.length(), through));
            file.write(through);
            if (full) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void force() {
            trace.add(new Change.Forced(number));
        }

        @Override
        public void truncate(long length) throws IOException {
            trace.add(new Change.Truncated(number, length));
            file.truncate(length);
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}

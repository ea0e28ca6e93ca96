package wickbench.journal;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import wickbench.proof.Digest;

/**
 * Copies this station's files to the shared folder, byte for byte and no further than they are signed; for one thread.
 *
 * <p>Entries come first, then the checkpoints that cover them, then the newest checkpoint alone, so that whoever reads in between
 * finds a part of what is signed and waits. A copy that was interrupted goes on where it stopped.
 */
final class Publisher {
    private static final int BLOCK = 1 << 20;
    private static final int COMPARED = 1 << 12;
    private final Disk disk;
    private final StationFolder from;
    private final StationFolder to;
    private long checkpoints = -1;

    Publisher(Disk disk, StationFolder from, StationFolder to) {
        this.disk = disk;
        this.from = from;
        this.to = to;
    }

    /** What the shared folder holds under this station's name. */
    enum There {
        /** The beginning of what is here, or all of it. */
        OURS,
        /** What is here, and more. */
        MORE,
        /** Another history. */
        OTHER
    }

    /** Compares the checkpoints there with those here; each stands for all entries before it. */
    There compare(Host.Shown shown) throws IOException {
        long there = to.checkpoints().toFile().length();
        if (there == checkpoints) {
            return There.OURS;
        }
        Ending theirs = Ending.of(to.checkpoints(), Long.MAX_VALUE);
        if (theirs.whole() > shown.checkpoints()) {
            return Ending.of(to.checkpoints(), shown.checkpoints())
                            .isSame(Ending.of(from.checkpoints(), shown.checkpoints()))
                    ? There.MORE
                    : There.OTHER;
        }
        if (theirs.whole() == 0) {
            return otherBeginning() ? There.OTHER : There.OURS;
        }
        return theirs.isSame(Ending.of(from.checkpoints(), theirs.whole())) ? There.OURS : There.OTHER;
    }

    /** Tells whether somebody founded a station of this name with another key. */
    private boolean otherBeginning() throws IOException {
        Optional<Digest> ours = key(from);
        return key(to).filter(key -> !Optional.of(key).equals(ours)).isPresent();
    }

    private static Optional<Digest> key(StationFolder folder) throws IOException {
        return Beginning.of(folder).founded().map(founded -> founded.key().fingerprint());
    }

    /**
     * Brings the shared folder up to what is signed; returns whether anything was new.
     *
     * @throws IOException also when the station's folder is not there
     */
    boolean publish(Host.Shown shown) throws IOException {
        if (shown.seal().isEmpty() || checkpoints == shown.checkpoints()) {
            return false;
        }
        Seal seal = shown.seal().get();
        long last = StationFolder.segmentOf(seal.size() - 1);
        for (long segment = checkpoints < 0 ? 0 : firstOpen(last); segment <= last; segment++) {
            long end = segment == last
                    ? seal.offset()
                    : from.segment(segment).toFile().length();
            extend(from.segment(segment), to.segment(segment), end);
        }
        extend(from.checkpoints(), to.checkpoints(), shown.checkpoints());
        disk.forceFolder(to.folder());
        disk.place(to.note(), seal.note().getBytes(StandardCharsets.UTF_8));
        checkpoints = shown.checkpoints();
        return true;
    }

    /** Returns the first segment that is not there in full. */
    private long firstOpen(long last) {
        long segment = last;
        while (segment > 0
                && to.segment(segment - 1).toFile().length()
                        != from.segment(segment - 1).toFile().length()) {
            segment--;
        }
        return segment;
    }

    private void extend(Path source, Path target, long end) throws IOException {
        long start = target.toFile().length();
        if (start == end) {
            return;
        }
        try (RandomAccessFile read = new RandomAccessFile(source.toFile(), "r");
                Disk.Growing grow = disk.grow(target)) {
            long at = Math.min(start, end);
            if (!sameEnd(read, target, at)) {
                // what an interrupted copy, or one that was never signed, left there
                at = 0;
            }
            grow.truncate(at);
            copy(read, grow, at, end);
            grow.force();
        }
    }

    /** Tells whether the last bytes before a place are the same in both. */
    private static boolean sameEnd(RandomAccessFile source, Path target, long at) throws IOException {
        int length = (int) Math.min(at, COMPARED);
        byte[] ours = new byte[length];
        byte[] theirs = new byte[length];
        source.seek(at - length);
        source.readFully(ours);
        try (RandomAccessFile file = new RandomAccessFile(target.toFile(), "r")) {
            file.seek(at - length);
            file.readFully(theirs);
        }
        return Arrays.equals(ours, theirs);
    }

    private static void copy(RandomAccessFile source, Disk.Growing target, long from, long end) throws IOException {
        source.seek(from);
        for (long at = from; at < end; at += BLOCK) {
            byte[] block = new byte[(int) Math.min(BLOCK, end - at)];
            source.readFully(block);
            target.write(block);
        }
    }
}

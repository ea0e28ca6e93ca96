package wickbench.journal;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The growing end of a station's segments; for one thread at a time.
 *
 * <p>An append writes all its lines, then forces them. When a write fails, nothing was forced, so cutting the files back to
 * what is acknowledged makes it as if nothing had been tried. When a force fails, nobody knows what is on the disk: the kernel
 * may drop the pages and call the next force a success, so there is no second try.
 */
final class EntryFiles implements Closeable {
    private final Disk disk;
    private final StationFolder folder;
    private final SortedMap<Long, Disk.Growing> open = new TreeMap<>();

    EntryFiles(Disk disk, StationFolder folder) {
        this.disk = disk;
        this.folder = folder;
    }

    /**
     * Appends lines, each with its leaf hash, after what is kept.
     *
     * <p>What is needed once the lines are forced is made before, so that want of memory cannot fall between the disk and the answer.
     */
    Written<Kept> append(Kept kept, List<Leaf> lines) {
        SortedMap<Long, byte[]> pieces = pieces(kept.size(), lines);
        Written<Kept> done = new Written.Forced<>(after(kept, lines, pieces));
        try {
            if (!endsAsKept(kept, pieces.keySet())) {
                return new Written.Broken<>(Say.words("failed.foreign", folder.folder()));
            }
            write(pieces);
        } catch (IOException | OutOfMemoryError e) {
            return undo(kept, e);
        }
        try {
            force(kept, pieces);
        } catch (IOException | OutOfMemoryError e) {
            return new Written.Broken<>(Say.words("failed.force", folder.folder(), reason(e)));
        }
        return done;
    }

    /** Opens the segments to be written and tells whether each ends where this journal left it. */
    private boolean endsAsKept(Kept kept, Set<Long> segments) throws IOException {
        for (long segment : segments) {
            if (!open.containsKey(segment)) {
                open.put(segment, disk.grow(folder.segment(segment)));
            }
            if (open.get(segment).length() != keptLength(kept, segment)) {
                return false;
            }
        }
        return true;
    }

    private static long keptLength(Kept kept, long segment) {
        return kept.size() > 0 && segment == kept.segment() ? kept.length() : 0;
    }

    private static SortedMap<Long, byte[]> pieces(long from, List<Leaf> lines) {
        SortedMap<Long, ByteArrayOutputStream> pieces = new TreeMap<>();
        long place = from;
        for (Leaf line : lines) {
            ByteArrayOutputStream piece =
                    pieces.computeIfAbsent(StationFolder.segmentOf(place), n -> new ByteArrayOutputStream());
            piece.writeBytes(line.line());
            piece.write('\n');
            place++;
        }
        SortedMap<Long, byte[]> bytes = new TreeMap<>();
        pieces.forEach((segment, piece) -> bytes.put(segment, piece.toByteArray()));
        return bytes;
    }

    private void write(SortedMap<Long, byte[]> pieces) throws IOException {
        for (var piece : pieces.entrySet()) {
            open.get(piece.getKey()).write(piece.getValue());
        }
    }

    private void force(Kept kept, SortedMap<Long, byte[]> pieces) throws IOException {
        for (long segment : pieces.keySet()) {
            open.get(segment).force();
        }
        if (kept.size() == 0 || pieces.lastKey() > kept.segment()) {
            disk.forceFolder(folder.folder());
        }
        closeBefore(pieces.lastKey());
    }

    private static Kept after(Kept kept, List<Leaf> lines, SortedMap<Long, byte[]> pieces) {
        long last = pieces.lastKey();
        return new Kept(
                kept.size() + lines.size(),
                lines.get(lines.size() - 1).hash(),
                keptLength(kept, last) + pieces.get(last).length);
    }

    private Written<Kept> undo(Kept kept, Throwable failure) {
        try {
            for (var file : open.entrySet()) {
                file.getValue().truncate(keptLength(kept, file.getKey()));
                // else what was refused could come back after a power cut, or mix with what is written there next
                file.getValue().force();
            }
            return new Written.Undone<>(Say.words("failed.write", folder.folder(), reason(failure)));
        } catch (IOException | OutOfMemoryError e) {
            return new Written.Broken<>(Say.words("failed.undo", folder.folder(), reason(failure), reason(e)));
        }
    }

    static String reason(Throwable e) {
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private void closeBefore(long segment) throws IOException {
        SortedMap<Long, Disk.Growing> full = open.headMap(segment);
        for (Disk.Growing file : full.values()) {
            file.close();
        }
        full.clear();
    }

    @Override
    public void close() throws IOException {
        closeBefore(Long.MAX_VALUE);
    }
}

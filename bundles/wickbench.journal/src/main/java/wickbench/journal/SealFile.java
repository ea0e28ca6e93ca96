package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** Keeps the checkpoints of a station: all of them in one growing file, the newest also alone; for one thread at a time. */
final class SealFile implements Closeable {
    private final Disk disk;
    private final StationFolder folder;
    private final Disk.Growing file;

    SealFile(Disk disk, StationFolder folder) throws IOException {
        this.disk = disk;
        this.folder = folder;
        file = disk.grow(folder.checkpoints());
    }

    Written<Seal> append(Seal seal) {
        long before;
        try {
            before = file.length();
        } catch (IOException | OutOfMemoryError e) {
            return new Written.Undone<>(Say.words("failed.write", folder.folder(), EntryFiles.reason(e)));
        }
        try {
            file.write((seal.line() + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException | OutOfMemoryError e) {
            return undo(before, e);
        }
        try {
            file.force();
            if (before == 0) {
                disk.forceFolder(folder.folder());
            }
        } catch (IOException | OutOfMemoryError e) {
            return new Written.Broken<>(Say.words("failed.force", folder.folder(), EntryFiles.reason(e)));
        }
        return placeNote(seal);
    }

    /** Cuts off what was begun; while half a line stands there, no other may follow it. */
    private Written<Seal> undo(long before, Throwable failure) {
        String reason = EntryFiles.reason(failure);
        try {
            file.truncate(before);
            file.force();
            return new Written.Undone<>(Say.words("failed.write", folder.folder(), reason));
        } catch (IOException | OutOfMemoryError e) {
            return new Written.Broken<>(Say.words("failed.undo", folder.folder(), reason, EntryFiles.reason(e)));
        }
    }

    /** Comes after the line, so that the note is never ahead of it; a note left behind is caught up by the next checkpoint. */
    private Written<Seal> placeNote(Seal seal) {
        try {
            disk.place(folder.note(), seal.note().getBytes(StandardCharsets.UTF_8));
            return new Written.Forced<>(seal);
        } catch (IOException | OutOfMemoryError e) {
            return new Written.Undone<>(Say.words("failed.write", folder.note(), EntryFiles.reason(e)));
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}

package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;

/**
 * The copy of another station's journal in this home: the same bytes, and of them only what that station has signed.
 *
 * <p>Any thread may read its {@link #station}; one at a time adds to it.
 */
final class Copy implements Closeable {
    private final Disk disk;
    private final Station station;
    private final EntryFiles files;
    private final SealFile seals;
    private volatile CopyMark mark;
    /** That the disk failed under it, so that what is here may be more, or less, than is known. */
    private boolean failed;

    private Copy(Disk disk, Station station, CopyMark mark) throws IOException {
        this.disk = disk;
        this.station = station;
        this.mark = mark;
        files = new EntryFiles(disk, station.folder());
        seals = new SealFile(disk, station.folder());
    }

    /** Begins a copy of which nothing is here yet. */
    static Copy begin(Disk disk, StationFolder folder, Founded founded) throws IOException {
        disk.makeFolder(folder.folder());
        clear(folder);
        CopyMark mark = new CopyMark(founded.key().fingerprint().hex(), 0);
        mark.write(disk, folder.folder());
        return new Copy(disk, new Station(folder, founded, Opened.nothing(founded)), mark);
    }

    /** Removes what a program left that died before the first checkpoint was here. */
    private static void clear(StationFolder folder) throws IOException {
        try (Stream<Path> files = Files.list(folder.folder())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
    }

    /**
     * Opens a copy; empty when no checkpoint is here yet.
     *
     * @throws Refusal {@code journal.tampered} when it contradicts its seal or the pinned key
     */
    static Optional<Copy> open(Disk disk, StationFolder folder, CopyMark mark) throws IOException {
        Ending ending = Ending.of(folder.checkpoints(), Long.MAX_VALUE);
        if (ending.line().isEmpty()) {
            return Optional.empty();
        }
        Seal seal = Seal.parse(new String(ending.line().get(), StandardCharsets.UTF_8))
                .orElseThrow(() -> Say.tampered("checkpoint.unreadable", folder.checkpoints()));
        cut(disk, folder.checkpoints(), ending.whole());
        cutEntries(disk, folder, seal);
        Opened opened = Opening.open(folder);
        Founded founded = opened.founded().orElseThrow();
        if (!founded.key().fingerprint().hex().equals(mark.fingerprint())) {
            throw Say.tampered("copy.key", folder.station());
        }
        return Optional.of(new Copy(disk, new Station(folder, founded, opened), mark));
    }

    /** Cuts off what came in without the checkpoint that covers it. */
    private static void cutEntries(Disk disk, StationFolder folder, Seal seal) throws IOException {
        long segment = StationFolder.segmentOf(seal.size() - 1);
        cut(disk, folder.segment(segment), seal.offset());
        for (long more = segment + 1; Files.exists(folder.segment(more)); more++) {
            Files.delete(folder.segment(more));
        }
    }

    private static void cut(Disk disk, Path file, long length) throws IOException {
        if (file.toFile().length() > length) {
            try (Disk.Growing growing = disk.grow(file)) {
                growing.truncate(length);
                growing.force();
            }
        }
    }

    Station station() {
        return station;
    }

    CopyMark mark() {
        return mark;
    }

    /** Returns how many entries this station's own journal has said it has seen. */
    long told() {
        return mark.told();
    }

    void tell(long size) throws IOException {
        mark = new CopyMark(mark.fingerprint(), size);
        mark.write(disk, station.folder().folder());
    }

    /** Adds lines and the checkpoint that covers them; returns the entries once they are on the disk. */
    synchronized List<Entry> add(Stretch stretch, Seal seal) throws IOException {
        Station.Next next = station.next(stretch.leaves(), stretch.entries());
        failed = true;
        Optional<Kept> more = stretch.leaves().isEmpty()
                ? Optional.empty()
                : Optional.of(forced(files.append(station.kept(), stretch.leaves())));
        Seal kept = forced(seals.append(seal));
        failed = false;
        more.ifPresent(now -> station.keep(next, now));
        station.keep(kept);
        return stretch.entries();
    }

    /** Returns how far to look at it while more may come in; never between lines and the checkpoint that covers them. */
    synchronized Verifier.Bounds bounds() throws IOException {
        return Verifier.Bounds.of(station.folder(), Optional.of(station));
    }

    boolean failed() {
        return failed;
    }

    private static <T> T forced(Written<T> written) throws IOException {
        if (written instanceof Written.Forced<T> forced) {
            return forced.value();
        }
        throw new IOException(
                written instanceof Written.Broken<T> broken ? broken.reason() : ((Written.Undone<T>) written).reason());
    }

    @Override
    public void close() throws IOException {
        files.close();
        seals.close();
    }
}

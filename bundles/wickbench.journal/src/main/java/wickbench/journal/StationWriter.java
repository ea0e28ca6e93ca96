package wickbench.journal;

import java.io.Closeable;
import java.io.IOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.proof.TreeHash;

/** Appends to this station's journal and signs it; for one thread at a time. */
final class StationWriter implements Closeable {
    /** Entries after which a checkpoint is due, come what may. */
    static final long DUE = 1_000;

    private final Station station;
    private final StationKey key;
    private final EntryFiles files;
    private final SealFile seals;
    private final TreeHash hash = new TreeHash();
    /** Why nothing can be recorded any more; blank while it can. */
    private volatile String broken = "";

    StationWriter(Disk disk, Station station, StationKey key) throws IOException {
        this.station = station;
        this.key = key;
        files = new EntryFiles(disk, station.folder());
        seals = new SealFile(disk, station.folder());
    }

    /**
     * Appends entries written at one moment.
     *
     * @throws Refusal when the disk refused
     * @throws wickbench.api.check.BadInput when a draft could not be read back
     */
    List<Entry> append(List<Draft> drafts, Instant now) {
        refuseBroken();
        Station.Next next;
        try {
            next = next(drafts, now.truncatedTo(ChronoUnit.MILLIS));
        } catch (OutOfMemoryError e) {
            throw Say.failed(Say.words("failed.memory"));
        }
        station.keep(next, forced(files.append(station.kept(), next.lines())));
        return next.entries();
    }

    private Station.Next next(List<Draft> drafts, Instant at) {
        List<Leaf> lines = new ArrayList<>();
        List<Entry> entries = entries(drafts, at, lines);
        return station.next(lines, entries);
    }

    private List<Entry> entries(List<Draft> drafts, Instant at, List<Leaf> lines) {
        ZoneOffset offset = station.founded().founding().zone().getRules().getOffset(at);
        Kept kept = station.kept();
        List<Entry> entries = new ArrayList<>();
        Hash prev = kept.leaf();
        for (Draft d : drafts) {
            EntryRef ref = new EntryRef(station.folder().station(), kept.size() + entries.size());
            // the leaf is not known before the line is written, and is no part of it
            Entry open = new Entry(ref, d.id(), prev, at, offset, d.by(), d.kind(), d.v(), d.body(), prev);
            Leaf line = line(open);
            lines.add(line);
            // what the journal cannot read back must never get into it
            entries.add(EntryLine.readBack(open, line).orRefuse());
            prev = line.hash();
        }
        return entries;
    }

    private Leaf line(Entry entry) {
        byte[] line = EntryLine.write(entry);
        if (line.length > Lines.LONGEST) {
            throw new Refusal(
                    "journal.too-long",
                    Say.words("too-long", Integer.toString(line.length), Integer.toString(Lines.LONGEST)));
        }
        return new Leaf(line, Hash.of(hash.leaf(line)));
    }

    private <T> T forced(Written<T> written) {
        if (written instanceof Written.Forced<T> forced) {
            return forced.value();
        }
        if (written instanceof Written.Broken<T> failure) {
            broken = failure.reason();
            throw Say.failed(failure.reason());
        }
        throw Say.failed(((Written.Undone<T>) written).reason());
    }

    private void refuseBroken() {
        if (!broken.isEmpty()) {
            throw Say.failed(broken);
        }
    }

    boolean due() {
        return station.unsealed() >= DUE;
    }

    /**
     * Signs what is kept, unless that is signed already.
     *
     * @throws Refusal when the disk refused
     */
    void seal() {
        if (station.unsealed() > 0) {
            refuseBroken();
            Kept kept = station.kept();
            station.keep(forced(
                    seals.append(Seal.sign(key, station.folder().station(), station.frontier(), kept.length()))));
        }
    }

    /** Keeps lines that this station recorded before, and the checkpoint that it made over them. */
    void takeBack(Stretch stretch, Seal seal) {
        refuseBroken();
        if (!stretch.leaves().isEmpty()) {
            Station.Next next = station.next(stretch.leaves(), stretch.entries());
            station.keep(next, forced(files.append(station.kept(), stretch.leaves())));
        }
        station.keep(forced(seals.append(seal)));
    }

    Optional<String> broken() {
        return Optional.of(broken).filter(reason -> !reason.isEmpty());
    }

    @Override
    public void close() throws IOException {
        files.close();
        seals.close();
    }
}

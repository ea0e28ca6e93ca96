package wickbench.journal;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Entry;
import wickbench.api.journal.Hash;
import wickbench.proof.Frontier;

/** What is kept of a station. Any thread may read; {@link StationWriter} alone, or nobody, changes it. */
final class Station {
    private final StationFolder folder;
    private final Founded founded;
    private final Reading reading;
    private Frontier frontier;
    private volatile Newest fresh = Newest.NOTHING;
    private volatile Kept kept;
    private volatile List<Seal> newest;

    Station(StationFolder folder, Founded founded, Opened opened) {
        this.folder = folder;
        this.founded = founded;
        reading = new Reading(folder);
        frontier = opened.frontier();
        kept = opened.kept();
        newest = opened.seal().stream().toList();
    }

    StationFolder folder() {
        return folder;
    }

    Founded founded() {
        return founded;
    }

    Reading reading() {
        return reading;
    }

    Kept kept() {
        return kept;
    }

    /** Returns the newest checkpoint. */
    Optional<Seal> newest() {
        return newest.stream().findFirst();
    }

    Optional<Checkpoint> checkpoint() {
        return newest().map(seal -> seal.checkpoint(folder.station()));
    }

    /** Returns how many entries no checkpoint covers yet. */
    long unsealed() {
        return kept.size() - newest().map(Seal::size).orElse(0L);
    }

    /** Returns the edge of the tree, for the one thread that may write. */
    Frontier frontier() {
        return frontier;
    }

    Hash root() {
        return new Hash(frontier.root().hex());
    }

    /** What is kept once lines are on the disk, made before they are. */
    record Next(List<Leaf> lines, List<Entry> entries, Frontier frontier, Newest newest) {}

    Next next(List<Leaf> lines, List<Entry> entries) {
        Frontier grown = frontier.copy();
        lines.forEach(line -> grown.add(line.hash().bytes()));
        return new Next(lines, entries, grown, Newest.of(entries));
    }

    void keep(Next next, Kept more) {
        frontier = next.frontier();
        fresh = next.newest();
        kept = more;
    }

    /** Hands over the entries from a place on; those of the newest append without a look at the file. */
    void read(long from, Predicate<Entry> reader) {
        Newest now = fresh;
        Kept upTo = kept;
        if (now.reach(from, upTo.size())) {
            now.read(from, reader);
        } else {
            reading.read(upTo, from, reader);
        }
    }

    void keep(Seal seal) {
        newest = List.of(seal);
    }
}

package wickbench.journal;

import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Checkpoint;
import wickbench.api.journal.Hash;

/** What is kept of a station. Any thread may read; {@link StationWriter} alone, or nobody, changes it. */
final class Station {
    private final StationFolder folder;
    private final Founded founded;
    private final Reading reading;
    private final Frontier frontier;
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
        return frontier.root();
    }

    void keep(Kept more, List<Leaf> lines) {
        lines.forEach(line -> frontier.add(line.hash().bytes()));
        kept = more;
    }

    void keep(Seal seal) {
        newest = List.of(seal);
    }
}

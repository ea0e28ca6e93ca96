package wickbench.journal;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.check.Checked;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.proof.Frontier;
import wickbench.proof.TreeHash;

/** The lines between what is kept of another station and one of its checkpoints, as they stand in the shared folder. */
final class Stretch {
    private final StationFolder there;
    private final boolean keeping;
    private final Frontier frontier;
    private final TreeHash hash = new TreeHash();
    private final List<Leaf> leaves = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private Hash before;
    private long length;
    private long place;
    private boolean broken;

    private Stretch(StationFolder there, Station here, boolean keeping) {
        this.there = there;
        this.keeping = keeping;
        Kept kept = here.kept();
        frontier = Frontier.of(kept.size(), here.frontier().peaks()).orElseThrow();
        before = kept.leaf();
        length = kept.length();
        place = kept.size();
    }

    /** Reads as many lines up to a checkpoint as are there and follow one another. */
    static Stretch read(StationFolder there, Station here, Seal to) throws IOException {
        return new Stretch(there, here, true).up(to);
    }

    private Stretch up(Seal to) throws IOException {
        boolean more = place < to.size();
        while (more) {
            more = segment(to) && place < to.size();
        }
        return this;
    }

    /** Reads on to the end of a segment; false when there are no more lines. */
    private boolean segment(Seal to) throws IOException {
        long segment = StationFolder.segmentOf(place);
        long start = place % StationFolder.SEGMENT == 0 ? 0 : length;
        if (!Files.exists(there.segment(segment))) {
            return false;
        }
        try (Lines lines = new Lines(there.segment(segment), start, Long.MAX_VALUE)) {
            while (place < to.size() && StationFolder.segmentOf(place) == segment) {
                if (!lines.next()) {
                    return false;
                }
                if (!take(lines.copy())) {
                    broken = !lines.holdsNul();
                    return false;
                }
                length = lines.position();
            }
        }
        return true;
    }

    private boolean take(byte[] line) {
        EntryRef ref = new EntryRef(there.station(), place);
        byte[] leaf = hash.leaf(line);
        Hash of = Hash.of(leaf);
        if (EntryLine.readStrictly(ref.toString(), line, of) instanceof Checked.Good<Entry> good
                && good.value().ref().equals(ref)
                && good.value().prev().equals(before)) {
            if (keeping) {
                leaves.add(new Leaf(line, of));
                entries.add(good.value());
            }
            frontier.add(leaf);
            place++;
            before = of;
            return true;
        }
        return false;
    }

    /** Tells whether just these lines were signed. */
    boolean fits(Seal seal) {
        return place == seal.size() && frontier.root().equals(seal.root()) && length == seal.offset();
    }

    /** Tells whether what is there contradicts the checkpoint, rather than being only a part of it. */
    boolean contradicts(Seal seal) {
        return broken || place == seal.size() && !fits(seal);
    }

    List<Leaf> leaves() {
        return leaves;
    }

    List<Entry> entries() {
        return entries;
    }

    /** Tells whether a folder holds, from its first line on, what a checkpoint covers. */
    static boolean whole(StationFolder folder, Founded founded, Seal seal) throws IOException {
        Station nothing = new Station(folder, founded, Opened.nothing(founded));
        return new Stretch(folder, nothing, false).up(seal).fits(seal);
    }
}

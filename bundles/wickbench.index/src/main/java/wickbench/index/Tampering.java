package wickbench.index;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Entry;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Hash;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.words.Words;
import wickbench.index.Marks.Mark;

/** Holds what views have taken against the journal of now; an entry that is the last of several views is read once. */
final class Tampering {
    static final String CODE = "index.ahead";
    private static final Words WORDS = Words.of(Tampering.class, "index");

    private final Journal journal;
    private final Map<EntryRef, Optional<Hash>> leaves = new HashMap<>();

    Tampering(Journal journal) {
        this.journal = journal;
    }

    /** Refuses when the view has taken entries that the journal does not have, or has otherwise. */
    void refuse(ViewTables view) {
        view.marks().forEach((station, mark) -> {
            refuseAhead(station, mark.taken(), size(station));
            refuseOther(new EntryRef(station, mark.taken() - 1), mark);
        });
    }

    static void refuseAhead(StationId station, long taken, long size) {
        if (taken > size) {
            throw new Refusal(CODE, WORDS.get("index.ahead.size", station, taken, size));
        }
    }

    private void refuseOther(EntryRef last, Mark mark) {
        Optional<Hash> leaf = leaves.computeIfAbsent(last, this::leaf);
        if (!leaf.equals(Optional.of(mark.leaf()))) {
            throw new Refusal(CODE, WORDS.get("index.ahead.leaf", last));
        }
    }

    private Optional<Hash> leaf(EntryRef ref) {
        return journal.entry(ref).map(Entry::leaf);
    }

    private long size(StationId station) {
        return journal.stations().contains(station) ? journal.size(station) : 0;
    }
}

package wickbench.index;

import wickbench.api.check.Refusal;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;
import wickbench.api.words.Words;
import wickbench.index.Marks.Mark;

/** Holds what a view has taken against the journal of now. */
final class Tampering {
    static final String CODE = "index.ahead";
    private static final Words WORDS = Words.of(Tampering.class, "index");

    private Tampering() {}

    /** Refuses when the view has taken entries that the journal does not have, or has otherwise. */
    static void refuse(Journal journal, ViewTables view) {
        view.marks().forEach((station, mark) -> {
            refuseAhead(station, mark.taken(), size(journal, station));
            refuseOther(journal, new EntryRef(station, mark.taken() - 1), mark);
        });
    }

    static void refuseAhead(StationId station, long taken, long size) {
        if (taken > size) {
            throw new Refusal(CODE, WORDS.get("index.ahead.size", station, taken, size));
        }
    }

    private static void refuseOther(Journal journal, EntryRef last, Mark mark) {
        boolean same = journal.entry(last)
                .filter(entry -> entry.leaf().equals(mark.leaf()))
                .isPresent();
        if (!same) {
            throw new Refusal(CODE, WORDS.get("index.ahead.leaf", last));
        }
    }

    private static long size(Journal journal, StationId station) {
        return journal.stations().contains(station) ? journal.size(station) : 0;
    }
}

package wickbench.ledger.services;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.journal.EntryRef;
import wickbench.api.reading.Outcome;
import wickbench.ledger.ResultRow;

/** What results come to, counted in one pass; those that were corrected or hold are kept, the others only counted. */
final class Gist {
    private final List<ResultRow> corrected = new ArrayList<>();
    private final List<ResultRow> held = new ArrayList<>();
    private final List<EntryRef> drawnFrom = new ArrayList<>();
    private long strips;
    private long controls;
    private long negatives;
    private long positives;
    private long invalids;
    private long inDoubt;
    private long unreviewed;

    static Gist of(Iterable<ResultRow> rows) {
        Gist gist = new Gist();
        rows.forEach(gist::add);
        return gist;
    }

    private void add(ResultRow row) {
        strips++;
        drawnFrom.add(row.ref());
        if (row.control().isPresent()) {
            controls++;
        } else if (row.outcome() == Outcome.NEGATIVE) {
            negatives++;
        } else if (row.outcome() == Outcome.INVALID) {
            invalids++;
        } else {
            positives++;
        }
        inDoubt += row.inDoubt() ? 1 : 0;
        unreviewed += row.reviewed().isEmpty() ? 1 : 0;
        if (row.corrections() > 0) {
            corrected.add(row);
        }
        if (row.held()) {
            held.add(row);
        }
    }

    /** Returns what people count; run controls stand for themselves and are neither Negative nor Positive here. */
    List<Count> counts() {
        return List.of(
                new Count("strips", strips),
                new Count("negatives", negatives),
                new Count("positives", positives),
                new Count("invalids", invalids),
                new Count("controls", controls),
                new Count("held", held.size()),
                new Count("in-doubt", inDoubt),
                new Count("corrected", corrected.size()),
                new Count("unreviewed", unreviewed));
    }

    /** How many of a sort. */
    record Count(String what, long many) {}

    long strips() {
        return strips;
    }

    long unreviewed() {
        return unreviewed;
    }

    long inDoubt() {
        return inDoubt;
    }

    List<ResultRow> corrected() {
        return corrected;
    }

    List<ResultRow> held() {
        return held;
    }

    List<EntryRef> drawnFrom() {
        return drawnFrom;
    }
}

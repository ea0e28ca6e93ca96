package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.lot.LotFacts;
import wickbench.api.lot.LotId;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;

/**
 * Something owed, and what a strip for it is made from.
 *
 * @param first the reading because of which it is owed; empty after a mere look
 * @param lot the lot that a strip is taken from now
 * @param unclean whether the place is to be cleaned first
 */
record OwedDue(OwedItem item, Optional<Reading> first, Optional<LotId> lot, boolean unclean) {

    /** Returns what is open, the oldest first; not on the UI thread. */
    static List<OwedDue> open(BenchDoors doors) {
        List<OwedItem> open = doors.owed().open();
        return open.stream().map(item -> of(item, open, doors)).toList();
    }

    private static OwedDue of(OwedItem item, List<OwedItem> open, BenchDoors doors) {
        Optional<RecordedReading> first =
                doors.index().find(item.owes()).flatMap(ref -> recorded(doors.journal(), ref));
        boolean unclean = open.stream()
                .anyMatch(other ->
                        other.owes().equals(item.owes()) && other.step().owed() == Owed.RE_CLEAN);
        return new OwedDue(
                item, first.map(RecordedReading::reading), first.map(reading -> lot(reading, doors)), unclean);
    }

    /** Stays with the lot of the first strip as long as that is fit. */
    private static LotId lot(RecordedReading first, BenchDoors doors) {
        LotId same = first.reading().lot();
        List<LotId> fit = doors.lots().stream()
                .flatMap(lots ->
                        lots.fitFor(first.method().kit(), doors.home().clock().instant()).stream())
                .map(LotFacts::lot)
                .toList();
        return fit.isEmpty() || fit.contains(same) ? same : fit.get(0);
    }

    private static Optional<RecordedReading> recorded(Journal journal, EntryRef ref) {
        List<RecordedReading> found = new java.util.ArrayList<>();
        journal.read(ref.station(), ref.seq(), entry -> {
            if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
                found.add(RecordedReadingJson.read(ref.toString(), entry.body()).orRefuse());
            }
            return false;
        });
        return found.stream().findFirst();
    }

    /** Tells whether a strip does it, and may be run now. */
    boolean byStrip() {
        boolean never = item.step() == Step.HOLD || item.step() == Step.RE_CLEAN;
        boolean stop = item.step() == Step.STOP_AND_CALL_QUALITY;
        boolean tooEarly = item.step() == Step.RE_TEST && unclean;
        return first.isPresent() && !never && !stop && !tooEarly;
    }
}

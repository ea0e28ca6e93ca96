package wickbench.bench.ui;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
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
        Set<UUID> unclean = open.stream()
                .filter(item -> item.step().owed() == Owed.RE_CLEAN)
                .map(OwedItem::owes)
                .collect(Collectors.toSet());
        LotsInReach lots = new LotsInReach(doors);
        return open.stream().map(item -> of(item, unclean, lots, doors)).toList();
    }

    private static OwedDue of(OwedItem item, Set<UUID> unclean, LotsInReach lots, BenchDoors doors) {
        Optional<RecordedReading> first =
                doors.index().find(item.owes()).flatMap(ref -> recorded(doors.journal(), ref));
        return new OwedDue(
                item, first.map(RecordedReading::reading), first.map(lots::next), unclean.contains(item.owes()));
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
        boolean never = item.step() == Step.HOLD || item.step() == Step.RE_CLEAN || item.step() == Step.DECIDE;
        boolean stop = item.step() == Step.STOP_AND_CALL_QUALITY;
        boolean tooEarly = item.step() == Step.RE_TEST && unclean;
        return first.isPresent() && !never && !stop && !tooEarly;
    }
}

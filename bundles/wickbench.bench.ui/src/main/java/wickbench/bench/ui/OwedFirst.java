package wickbench.bench.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.lot.LotId;
import wickbench.api.owed.OwedItem;
import wickbench.api.reading.Reading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.RecordedReadingJson;

/**
 * Something that a strip does, and what that strip is made from.
 *
 * @param first the reading because of which it is owed
 * @param lot the lot that a strip is taken from now
 */
record OwedFirst(OwedItem item, Reading first, LotId lot) {

    /** Returns what strips do, with the readings from the journal; not on the UI thread. */
    static List<OwedFirst> of(List<OwedDue> open, BenchDoors doors) {
        LotsInReach lots = new LotsInReach(doors);
        return open.stream()
                .filter(OwedDue::byStrip)
                .flatMap(due -> of(due.item(), lots, doors).stream())
                .toList();
    }

    private static Optional<OwedFirst> of(OwedItem item, LotsInReach lots, BenchDoors doors) {
        return doors.index()
                .find(item.owes())
                .flatMap(ref -> recorded(doors.journal(), ref))
                .map(recorded -> new OwedFirst(item, recorded.reading(), lots.next(recorded)));
    }

    private static Optional<RecordedReading> recorded(Journal journal, EntryRef ref) {
        List<RecordedReading> found = new ArrayList<>();
        journal.read(ref.station(), ref.seq(), entry -> {
            if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
                found.add(RecordedReadingJson.read(ref.toString(), entry.body()).orRefuse());
            }
            return false;
        });
        return found.stream().findFirst();
    }
}

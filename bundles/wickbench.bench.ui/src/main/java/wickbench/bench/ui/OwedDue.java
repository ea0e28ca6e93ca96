package wickbench.bench.ui;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import wickbench.api.owed.OwedItem;
import wickbench.api.owed.Step;
import wickbench.api.reading.Owed;

/**
 * Something owed, and whether a strip does it.
 *
 * @param unclean whether the place is to be cleaned first
 */
record OwedDue(OwedItem item, boolean unclean) {

    /** Returns what is open, the oldest first; not on the UI thread. */
    static List<OwedDue> open(BenchDoors doors) {
        List<OwedItem> open = doors.owed().open();
        Set<UUID> unclean = open.stream()
                .filter(item -> item.step().owed() == Owed.RE_CLEAN)
                .map(OwedItem::owes)
                .collect(Collectors.toSet());
        return open.stream()
                .map(item -> new OwedDue(item, unclean.contains(item.owes())))
                .toList();
    }

    /** Tells whether a strip does it, and may be run now; a mere look has no method. */
    boolean byStrip() {
        boolean never = item.step() == Step.HOLD || item.step() == Step.RE_CLEAN || item.step() == Step.DECIDE;
        boolean stop = item.step() == Step.STOP_AND_CALL_QUALITY;
        boolean tooEarly = item.step() == Step.RE_TEST && unclean;
        return item.method().isPresent() && !never && !stop && !tooEarly;
    }
}

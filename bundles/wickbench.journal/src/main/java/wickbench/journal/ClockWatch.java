package wickbench.journal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Entry;

/**
 * Notices that the clock was set back between two entries; for one thread at a time.
 *
 * <p>Nothing is refused for it: places, not times, put the entries of a station in order.
 */
final class ClockWatch {
    private Optional<Entry> before = Optional.empty();

    /** Looks at entries written at one moment; says so when the one before them was written later. */
    Optional<String> look(List<Entry> entries) {
        Entry first = entries.get(0);
        Instant at = first.at();
        Optional<String> notice = before.filter(entry -> entry.at().isAfter(at))
                .map(entry -> Say.words("clock.back", first.ref(), at, entry.ref(), entry.at()));
        before = Optional.of(entries.get(entries.size() - 1));
        return notice;
    }
}

package wickbench.ledger.pack;

import java.time.Instant;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.journal.Entry;
import wickbench.ledger.papers.Packing.Kept;

/** Counts records by their sort, and reckons until when each is kept. */
final class KeptRecords {
    private final Map<Records, Count> counts = new EnumMap<>(Records.class);
    private final int years;
    private final ZoneId zone;

    /** How many, and when the first and the last of them was written. */
    private record Count(long entries, Instant oldest, Instant newest) {
        static Count of(Instant at) {
            return new Count(1, at, at);
        }

        Count and(Count other) {
            return new Count(
                    entries + other.entries,
                    oldest.isBefore(other.oldest) ? oldest : other.oldest,
                    newest.isAfter(other.newest) ? newest : other.newest);
        }
    }

    /** @param years as the site profile says, two at least */
    KeptRecords(int years, ZoneId zone) {
        this.years = years;
        this.zone = zone;
    }

    void count(Entry entry) {
        counts.merge(Records.of(entry.kind()), Count.of(entry.at()), Count::and);
    }

    List<Kept> all() {
        return Stream.of(Records.values()).map(this::kept).toList();
    }

    private Kept kept(Records records) {
        Optional<Count> count = Optional.ofNullable(counts.get(records));
        return new Kept(
                records.code(),
                count.map(Count::entries).orElse(0L),
                count.map(Count::oldest),
                years,
                count.filter(some -> !records.inUse())
                        .map(some -> some.newest().atZone(zone).plusYears(years).toInstant()));
    }
}

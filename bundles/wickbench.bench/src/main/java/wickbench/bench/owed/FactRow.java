package wickbench.bench.owed;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import wickbench.reading.owed.Fact;

/** What one entry tells, and where that stands in the order of entries. */
record FactRow(Instant written, String station, long seq, List<Fact> facts) {
    static final Comparator<FactRow> ORDER = Comparator.comparing(FactRow::written)
            .thenComparing(FactRow::station)
            .thenComparingLong(FactRow::seq);
}

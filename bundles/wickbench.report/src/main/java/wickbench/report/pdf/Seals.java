package wickbench.report.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wickbench.api.journal.EntryRef;
import wickbench.api.journal.Journal;
import wickbench.api.journal.StationId;

/** Seals what a report draws from: a checkpoint of each station, this one's signed now, the others' as they came. */
record Seals(Journal journal) {

    List<StationSeal> of(List<EntryRef> drawnFrom) {
        Map<StationId, LongSummaryStatistics> ranges = drawnFrom.stream()
                .collect(Collectors.groupingBy(
                        EntryRef::station, TreeMap::new, Collectors.summarizingLong(EntryRef::seq)));
        List<StationSeal> seals = new ArrayList<>();
        ranges.forEach((station, range) -> seals.add(new StationSeal(
                station,
                range.getMin(),
                range.getMax(),
                journal.checkpoint(station),
                journal.keyFingerprint(station))));
        return seals;
    }
}

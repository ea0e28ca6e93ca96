package wickbench.bench.ui;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import wickbench.api.check.Complaint;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.OutcomeWords;

/** What became of a run sheet: judged readings, or complaints and no reading. */
record SheetRead(String name, List<RecordedReading> readings, List<Complaint> complaints) {
    SheetRead {
        readings = List.copyOf(readings);
        complaints = List.copyOf(complaints);
    }

    boolean good() {
        return complaints.isEmpty();
    }

    /** Returns for example {@code 9 Negative, 2 Invalid}; outcomes that do not occur are left out. */
    String counts() {
        return Arrays.stream(Outcome.values())
                .filter(outcome -> count(outcome) > 0)
                .map(outcome -> count(outcome) + "\u00a0" + OutcomeWords.text(outcome))
                .collect(Collectors.joining(" \u00b7 "));
    }

    private long count(Outcome outcome) {
        return readings.stream()
                .filter(reading -> reading.verdict().outcome() == outcome)
                .count();
    }
}

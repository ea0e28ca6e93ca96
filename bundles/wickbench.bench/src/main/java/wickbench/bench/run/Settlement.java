package wickbench.bench.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Reading;
import wickbench.api.reading.ReadingDoor;
import wickbench.api.reading.RecordedReading;
import wickbench.api.reading.RunControl;

/**
 * Which readings of a run may go into the journal.
 *
 * <p>An entry never changes, so a Negative waits while a low positive control of its kit is still to be read: should that
 * fail, the Negative would not stand. Anything else goes at once.
 */
final class Settlement {
    private final RunState run;
    private final Moment now;

    Settlement(RunState run, Moment now) {
        this.run = run;
        this.now = now;
    }

    /** Returns what has been read so far, recorded or not, in order of number: controls speak for the others. */
    List<Reading> read() {
        return run.strips().stream()
                .filter(strip -> strip.kept().isPresent() || strip.lost())
                .map(StripState::reading)
                .toList();
    }

    /** Judges all that has been read and returns the strips that may be recorded now. */
    List<StripState> ready(ReadingDoor door) {
        List<StripState> kept = run.in(Phase.KEPT, now);
        if (kept.isEmpty()) {
            return List.of();
        }
        List<Reading> read = read();
        List<RecordedReading> judged = door.judge(read);
        List<StripState> ready = new ArrayList<>();
        for (StripState strip : kept) {
            RecordedReading verdict = judged.get(read.indexOf(strip.reading()));
            if (verdict.verdict().outcome() != Outcome.NEGATIVE || !controlOpen(strip)) {
                ready.add(strip);
            }
        }
        return ready;
    }

    /** Tells whether a low positive control of the strip's kit is still to be read. */
    boolean controlOpen(StripState strip) {
        return run.strips().stream()
                .filter(other -> !other.phase(now).over())
                .filter(other -> other.kept().isEmpty() && !other.lost())
                .map(other -> other.strip().unread())
                .filter(reading -> reading.sample().control().equals(Optional.of(RunControl.LOW_POSITIVE)))
                .anyMatch(control -> sameKit(control, strip.strip().unread()));
    }

    private static boolean sameKit(Reading one, Reading other) {
        return one.method().equals(other.method()) && one.lot().equals(other.lot());
    }
}

package wickbench.bench;

import java.util.Optional;
import wickbench.api.clash.Decision;
import wickbench.api.clash.Settlement;
import wickbench.api.journal.Entry;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.CorrectedReadingJson;

/** What the bench's tables are folded by: a method by its id, a reading by its own. */
final class BenchSubjects {
    static final String METHOD = "method:";
    static final String READING = "reading:";

    private BenchSubjects() {}

    /** Returns what an entry is about; empty when the bench does not know its kind. */
    static Optional<String> of(Entry entry) {
        if (issues(entry)) {
            return Optional.of(METHOD + MethodEntries.issuedId(entry));
        }
        if (withdraws(entry)) {
            return Optional.of(METHOD + MethodEntries.withdrawnId(entry));
        }
        if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
            return Optional.of(READING + entry.id());
        }
        if (entry.is(CorrectedReading.KIND, CorrectedReading.VERSION)) {
            return Optional.of(READING + correction(entry).corrects());
        }
        return Settlement.of(entry).map(Settlement::subject).filter(subject -> subject.startsWith(METHOD));
    }

    /** A version issued here and another there, or a withdrawal, stand against one another. */
    static Optional<Decision> decision(Entry entry) {
        if (issues(entry)) {
            String claim = MethodEntries.issuedMethod(entry).canonical();
            return of(entry).map(subject -> new Decision(subject, claim));
        }
        return withdraws(entry)
                ? of(entry).map(subject -> new Decision(subject, MethodEntries.WITHDRAWN))
                : Optional.empty();
    }

    static CorrectedReading correction(Entry entry) {
        return CorrectedReadingJson.read(entry.ref().toString(), entry.body()).orRefuse();
    }

    private static boolean issues(Entry entry) {
        return entry.is(MethodEntries.ISSUED, MethodEntries.VERSION);
    }

    private static boolean withdraws(Entry entry) {
        return entry.is(MethodEntries.WITHDRAWN, MethodEntries.VERSION);
    }
}

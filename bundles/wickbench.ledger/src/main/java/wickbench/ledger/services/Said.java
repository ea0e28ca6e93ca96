package wickbench.ledger.services;

import java.util.Optional;
import java.util.UUID;
import wickbench.api.journal.Entry;
import wickbench.api.reading.CorrectedReading;
import wickbench.api.reading.RecordedReading;
import wickbench.reading.CorrectedReadingJson;
import wickbench.reading.RecordedReadingJson;

/**
 * An entry's body as a statement of a result.
 *
 * @param result the id of the entry that recorded the reading first
 * @param reason why it was corrected; empty for a recording
 */
record Said(UUID result, Optional<String> reason, RecordedReading reading) {

    /** Returns what the entry says; empty when it is of another kind or of a version that is not understood. */
    static Optional<Said> of(Entry entry) {
        String source = entry.ref().toString();
        if (entry.is(RecordedReading.KIND, RecordedReading.VERSION)) {
            RecordedReading reading =
                    RecordedReadingJson.read(source, entry.body()).orRefuse();
            return Optional.of(new Said(entry.id(), Optional.empty(), reading));
        }
        if (entry.is(CorrectedReading.KIND, CorrectedReading.VERSION)) {
            CorrectedReading corrected =
                    CorrectedReadingJson.read(source, entry.body()).orRefuse();
            return Optional.of(new Said(corrected.corrects(), Optional.of(corrected.reason()), corrected.now()));
        }
        return Optional.empty();
    }

    /** Tells whether a newer program wrote this entry about a result. */
    static boolean newer(Entry entry) {
        return entry.kind().equals(RecordedReading.KIND) && entry.v() > RecordedReading.VERSION
                || entry.kind().equals(CorrectedReading.KIND) && entry.v() > CorrectedReading.VERSION;
    }
}

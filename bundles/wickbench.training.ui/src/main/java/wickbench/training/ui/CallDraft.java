package wickbench.training.ui;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.LineRole;
import wickbench.api.method.Seen;

/**
 * A strip that is being called.
 *
 * @param read when the first line was answered
 */
record CallDraft(String round, String code, Map<LineRole, Seen> answers, Optional<Instant> read) {

    static CallDraft of(String round, String code) {
        return new CallDraft(round, code, Map.of(), Optional.empty());
    }

    /** Returns it read at that time, unless it was before. */
    CallDraft read(Instant at) {
        return read.isPresent() ? this : new CallDraft(round, code, answers, Optional.of(at));
    }

    CallDraft answers(Map<LineRole, Seen> given) {
        return new CallDraft(round, code, given, read);
    }
}

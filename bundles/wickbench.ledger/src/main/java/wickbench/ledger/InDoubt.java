package wickbench.ledger;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import wickbench.api.journal.EntryRef;

/**
 * Something that put a Negative in doubt.
 *
 * @param entry the entry that says so, of whatever kind
 * @param cause as in {@link wickbench.api.doubt.Doubt}
 * @param at when it was written
 * @param decisions the entries by which it was decided whether the result stands; none while it waits
 */
public record InDoubt(EntryRef entry, UUID id, String cause, Instant at, List<EntryRef> decisions) {
    public InDoubt {
        decisions = List.copyOf(decisions);
    }

    public boolean open() {
        return decisions.isEmpty();
    }
}

package wickbench.training;

import static wickbench.training.CompetenceState.AUTHORISED;
import static wickbench.training.CompetenceState.LAPSED;
import static wickbench.training.CompetenceState.NEVER;
import static wickbench.training.CompetenceState.SUSPENDED;
import static wickbench.training.CompetenceState.UNREAD;

import java.util.Map;
import java.util.Optional;
import wickbench.api.words.Coded;

/** What moves a competence from state to state: the whole table. What does not stand here is not allowed. */
public enum CompetenceMove implements Coded {
    /** Not while suspended: that takes a restoration, which answers the suspension. */
    AUTHORISE(Map.of(NEVER, AUTHORISED, AUTHORISED, AUTHORISED, UNREAD, AUTHORISED, LAPSED, AUTHORISED)),
    SUSPEND(Map.of(AUTHORISED, SUSPENDED, UNREAD, SUSPENDED, LAPSED, SUSPENDED, SUSPENDED, SUSPENDED)),
    RESTORE(Map.of(SUSPENDED, AUTHORISED)),
    /** By the calendar alone, nobody does it. */
    LAPSE(Map.of(AUTHORISED, LAPSED, UNREAD, LAPSED, LAPSED, LAPSED, SUSPENDED, SUSPENDED, NEVER, NEVER)),
    /** A newer version of the method came into force. */
    REVISE(Map.of(AUTHORISED, UNREAD, UNREAD, UNREAD, LAPSED, LAPSED, SUSPENDED, SUSPENDED, NEVER, NEVER)),
    /** Read and understood: makes nobody authorised who was not. */
    ACKNOWLEDGE(Map.of(AUTHORISED, AUTHORISED, UNREAD, AUTHORISED, LAPSED, LAPSED, SUSPENDED, SUSPENDED, NEVER, NEVER));

    private final Map<CompetenceState, CompetenceState> table;

    CompetenceMove(Map<CompetenceState, CompetenceState> table) {
        this.table = table;
    }

    /** Returns the state after this move; empty when it is not allowed. */
    public Optional<CompetenceState> from(CompetenceState state) {
        return Optional.ofNullable(table.get(state));
    }
}

package wickbench.stock;

import static wickbench.stock.LotState.AWAITING_CHECK;
import static wickbench.stock.LotState.DESTROYED;
import static wickbench.stock.LotState.FIT;
import static wickbench.stock.LotState.QUARANTINED;
import static wickbench.stock.LotState.QUARANTINED_UNCHECKED;
import static wickbench.stock.LotState.REJECTED;
import static wickbench.stock.LotState.USED_UP;

import java.util.Map;
import java.util.Optional;
import wickbench.api.words.Coded;

/** What moves a lot from state to state: the whole table. What does not stand here is not allowed. */
public enum LotMove implements Coded {
    /** Another delivery of a lot: it is checked again, since every delivery is. */
    RECEIVE(Map.of(
            FIT, AWAITING_CHECK,
            USED_UP, AWAITING_CHECK,
            AWAITING_CHECK, AWAITING_CHECK,
            QUARANTINED, QUARANTINED_UNCHECKED,
            QUARANTINED_UNCHECKED, QUARANTINED_UNCHECKED)),
    PASS(Map.of(FIT, FIT, AWAITING_CHECK, FIT, QUARANTINED, QUARANTINED, QUARANTINED_UNCHECKED, QUARANTINED)),
    WAIVE(Map.of(AWAITING_CHECK, FIT, QUARANTINED_UNCHECKED, QUARANTINED)),
    /** Also later, when a lot that is used up or gone turns out to have been bad. */
    REJECT(Map.of(
            FIT, REJECTED,
            USED_UP, REJECTED,
            AWAITING_CHECK, REJECTED,
            QUARANTINED, REJECTED,
            QUARANTINED_UNCHECKED, REJECTED,
            DESTROYED, DESTROYED)),
    QUARANTINE(Map.of(
            FIT, QUARANTINED,
            USED_UP, USED_UP,
            AWAITING_CHECK, QUARANTINED_UNCHECKED,
            QUARANTINED, QUARANTINED,
            QUARANTINED_UNCHECKED, QUARANTINED_UNCHECKED)),
    /** Once the last open quarantine was decided on. */
    RELEASE(Map.of(QUARANTINED, FIT, QUARANTINED_UNCHECKED, AWAITING_CHECK)),
    USE_UP(Map.of(FIT, USED_UP, AWAITING_CHECK, USED_UP)),
    DESTROY(Map.of(
            FIT, DESTROYED,
            USED_UP, DESTROYED,
            AWAITING_CHECK, DESTROYED,
            QUARANTINED, DESTROYED,
            QUARANTINED_UNCHECKED, DESTROYED,
            REJECTED, DESTROYED));

    private final Map<LotState, LotState> table;

    LotMove(Map<LotState, LotState> table) {
        this.table = table;
    }

    /** Returns the state after this move; empty when it is not allowed. */
    public Optional<LotState> from(LotState state) {
        return Optional.ofNullable(table.get(state));
    }
}

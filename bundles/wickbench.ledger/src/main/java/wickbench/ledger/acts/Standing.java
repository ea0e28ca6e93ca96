package wickbench.ledger.acts;

import java.util.List;
import java.util.Optional;
import wickbench.api.journal.Entry;
import wickbench.api.owed.OwedItem;
import wickbench.ledger.ResultRow;

/**
 * How a line or batch stands: what was tested, what stands, and whether it may go.
 *
 * @param points every planned point with the result by which it stands
 * @param results all that were read of it, newest first
 * @param cases those that hold or held product of it
 * @param owed what is open at it
 * @param outside what outside laboratories reported of it
 * @param released how it was released, oldest first
 * @param reasons why it may not go; none means that it may
 */
public record Standing(
        Subject subject,
        List<Tested> points,
        List<ResultRow> results,
        List<Case> cases,
        List<OwedItem> owed,
        List<Outside> outside,
        List<Entry> released,
        List<No> reasons) {
    public Standing {
        points = List.copyOf(points);
        results = List.copyOf(results);
        cases = List.copyOf(cases);
        owed = List.copyOf(owed);
        outside = List.copyOf(outside);
        released = List.copyOf(released);
        reasons = List.copyOf(reasons);
    }

    /** A planned point with the newest result of it; empty where it was not tested. */
    public record Tested(Point point, Optional<ResultRow> result, boolean good) {}

    public boolean mayGo() {
        return reasons.isEmpty();
    }

    /** Tells whether it was released and now should not have been. */
    public boolean calledBack() {
        return !released.isEmpty() && !mayGo();
    }
}

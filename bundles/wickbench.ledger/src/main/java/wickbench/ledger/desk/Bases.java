package wickbench.ledger.desk;

import java.util.Optional;
import wickbench.api.index.Index;
import wickbench.api.journal.Journal;
import wickbench.ledger.trend.TrendBase;

/** Finds over which period the limits of a trend are frozen: the newest entry for it holds. */
public record Bases(Index index, Journal journal) {

    /** @param scope as {@link TrendBase#scope} names the trend */
    public Optional<TrendBase> of(String scope) {
        return new Acts(index, journal).newest(TrendBase.KIND, scope).flatMap(TrendBase::of);
    }
}

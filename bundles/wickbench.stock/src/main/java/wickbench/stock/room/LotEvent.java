package wickbench.stock.room;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wickbench.api.journal.EntryRef;
import wickbench.api.lot.LotId;
import wickbench.stock.Cause;
import wickbench.stock.Companion;
import wickbench.stock.LotCheck;

/** What the body of an entry about one lot says; each form is a kind of its own. */
sealed interface LotEvent {

    LotId lot();

    /** Returns when it was done, which is not when it was written. */
    Instant at();

    /**
     * Boxes came.
     *
     * @param compared the revisions with which the insert was compared, as the methods stated them then
     */
    record Received(
            LotId lot,
            Instant at,
            String kit,
            LocalDate expiry,
            int boxes,
            Optional<String> insert,
            List<String> compared,
            Optional<String> serial,
            Optional<LocalDate> produced,
            Optional<String> place,
            List<Companion> companions,
            Optional<String> scan)
            implements LotEvent {}

    /** Its check was judged. */
    record Checked(LotId lot, Instant at, LotCheck check) implements LotEvent {}

    /** It is used without a check. */
    record Waived(LotId lot, Instant at, String reason) implements LotEvent {}

    /** It is bad, and what was read with it from {@code since} on is touched. */
    record Rejected(LotId lot, Instant at, Instant since, String reason) implements LotEvent {}

    /** It is held until a decision. */
    record Quarantined(LotId lot, Instant at, Cause cause, String reason, Optional<UUID> about) implements LotEvent {}

    /** Somebody decided on what held it. */
    record Released(LotId lot, Instant at, List<UUID> quarantines, Optional<LocalDate> until, String reason)
            implements LotEvent {}

    /** A pouch was opened. */
    record Opened(LotId lot, Instant at, Map<String, LotId> with) implements LotEvent {}

    /** Parts went that no reading counts. */
    record Taken(LotId lot, Instant at, String part, BigDecimal amount, String reason) implements LotEvent {}

    /** Somebody counted. */
    record Counted(
            LotId lot,
            Instant at,
            int pouches,
            int loose,
            Map<String, BigDecimal> others,
            Map<String, BigDecimal> expected,
            Optional<String> reason)
            implements LotEvent {}

    /** It lies in a fridge from now on. */
    record Placed(LotId lot, Instant at, String place) implements LotEvent {}

    /** Nothing is left of it. */
    record UsedUp(LotId lot, Instant at) implements LotEvent {}

    /** Of decisions that clashed these do not stand. */
    record Settled(LotId lot, Instant at, Set<EntryRef> dropped) implements LotEvent {}

    /** It is gone. */
    record Destroyed(LotId lot, Instant at, String reason) implements LotEvent {}
}

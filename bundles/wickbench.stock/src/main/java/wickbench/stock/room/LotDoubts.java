package wickbench.stock.room;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import wickbench.api.doubt.Doubt;
import wickbench.api.doubt.Trust;
import wickbench.api.json.Json;

/**
 * Which results an event of a lot puts in doubt, for whoever keeps results.
 *
 * <p>A rejected lot, one that was kept wrongly, and one that a decision shortened to a day that is past. A release ends what a
 * quarantine began, from then on; what was read meanwhile waits for its own decision.
 */
final class LotDoubts {
    static final String REJECTED = "lot.rejected";
    static final String STORAGE = "lot.storage";
    static final String SHORTENED = "lot.shortened";

    private LotDoubts() {}

    /** Returns the body of an event with what it puts in doubt. */
    static Json.Obj into(Json.Obj body, LotEvent event, ZoneId zone) {
        Json.Obj doubted = Doubt.into(body, doubts(event, zone));
        return event instanceof LotEvent.Released released
                ? new Trust(released.quarantines(), released.at()).into(doubted)
                : doubted;
    }

    private static List<Doubt> doubts(LotEvent event, ZoneId zone) {
        if (event instanceof LotEvent.Rejected rejected) {
            return List.of(doubt(REJECTED, event, rejected.since()));
        } else if (event instanceof LotEvent.Quarantined held && held.cause().storage()) {
            return List.of(doubt(STORAGE, event, held.at()));
        } else if (event instanceof LotEvent.Released released) {
            return released.until().map(day -> doubt(SHORTENED, event, after(day, zone))).stream()
                    .toList();
        }
        return List.of();
    }

    private static Doubt doubt(String cause, LotEvent event, Instant from) {
        return Doubt.ofLot(cause, event.lot(), Optional.of(from));
    }

    /** The last day of a lot is included. */
    private static Instant after(LocalDate day, ZoneId zone) {
        return day.plusDays(1).atStartOfDay(zone).toInstant();
    }
}

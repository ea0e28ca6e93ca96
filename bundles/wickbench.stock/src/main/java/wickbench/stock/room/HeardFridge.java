package wickbench.stock.room;

import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.room.FridgeJson.Log;

/**
 * What a log says of the end of its time.
 *
 * @param to the last reading
 * @param outside what was still outside the range then; of a thermometer with memory nobody knows
 */
record HeardFridge(Instant to, Optional<Excursion> outside) {

    static HeardFridge of(Log log) {
        return new HeardFridge(
                log.to(),
                log.excursions().stream()
                        .filter(each -> log.rows() > 0 && each.to().isAfter(log.to()))
                        .filter(each -> each.cause() != Cause.GAP && each.cause() != Cause.STUCK)
                        .max(Comparator.comparing(Excursion::cause)));
    }

    static HeardFridge later(HeardFridge one, HeardFridge other) {
        return one.to().isAfter(other.to()) ? one : other;
    }
}

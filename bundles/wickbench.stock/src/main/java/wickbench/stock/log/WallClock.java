package wickbench.stock.log;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.List;
import wickbench.stock.LogShape.DateOrder;

/**
 * Turns the wall time of a logger into instants.
 *
 * <p>The hour that an autumn night has twice is told by the order of the rows: the first passage is summer time, and once the clock
 * has gone back the second begins. A time that a spring night does not have is refused, for then the logger does not follow the
 * zone and its own must be named.
 */
final class WallClock {
    private final ZoneRules rules;
    private final boolean ascending;
    private long last = Long.MIN_VALUE;

    WallClock(ZoneId zone, boolean ascending) {
        this.rules = zone.getRules();
        this.ascending = ascending;
    }

    long millis(Stamp stamp, DateOrder order, String file, long line) {
        LocalDateTime local =
                stamp.time(order).orElseThrow(() -> LogTrouble.at(file, line, "no-such-time", order.code()));
        if (stamp.offset().isPresent()) {
            return kept(at(local, stamp.offset().get()), file, line);
        }
        List<ZoneOffset> offsets = rules.getValidOffsets(local);
        if (offsets.isEmpty()) {
            throw LogTrouble.at(file, line, "skipped-hour", local);
        }
        long first = at(local, offsets.get(0));
        boolean again = offsets.size() > 1 && first <= last;
        return kept(again ? at(local, offsets.get(1)) : first, file, line);
    }

    private static long at(LocalDateTime local, ZoneOffset offset) {
        return local.toEpochSecond(offset) * 1000 + local.getNano() / 1_000_000;
    }

    private long kept(long millis, String file, long line) {
        if (ascending && millis <= last) {
            throw LogTrouble.at(file, line, millis == last ? "same-time" : "not-later");
        }
        last = Math.max(last, millis);
        return millis;
    }
}

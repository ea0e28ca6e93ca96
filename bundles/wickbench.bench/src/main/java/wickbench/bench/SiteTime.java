package wickbench.bench;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.function.Supplier;

/**
 * Reads ISO 8601 times; one without offset is meant in the site's zone.
 *
 * <p>An hour that the site's clocks skip or repeat cannot be told from a bare local time, so it is refused and named.
 */
final class SiteTime {
    private final Supplier<ZoneId> zone;

    /** @param zone asked only when a time comes without offset */
    SiteTime(Supplier<ZoneId> zone) {
        this.zone = zone;
    }

    /**
     * Reads one time.
     *
     * @throws IllegalArgumentException saying what was expected
     */
    Instant instant(String text) {
        TemporalAccessor time = parse(text.replaceFirst("^(\\d{4}-\\d{2}-\\d{2}) ", "$1T"), text);
        return time instanceof OffsetDateTime withOffset ? withOffset.toInstant() : local((LocalDateTime) time, text);
    }

    private static TemporalAccessor parse(String iso, String text) {
        try {
            return DateTimeFormatter.ISO_DATE_TIME.parseBest(iso, OffsetDateTime::from, LocalDateTime::from);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(BenchWords.get("time.expected", text), e);
        }
    }

    private Instant local(LocalDateTime time, String text) {
        List<ZoneOffset> offsets = zone.get().getRules().getValidOffsets(time);
        if (offsets.size() != 1) {
            throw new IllegalArgumentException(
                    BenchWords.get(offsets.isEmpty() ? "time.skipped" : "time.repeated", text, zone.get()));
        }
        return time.toInstant(offsets.get(0));
    }
}

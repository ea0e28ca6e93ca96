package wickbench.ledger.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as the site's clocks show them. */
record SiteTimes(ZoneId zone) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    String minute(Instant instant) {
        return MINUTE.format(instant.atZone(zone));
    }

    String second(Instant instant) {
        return SECOND.format(instant.atZone(zone));
    }

    /** Returns the time of day. */
    String clock(Instant instant) {
        return CLOCK.format(instant.atZone(zone));
    }
}

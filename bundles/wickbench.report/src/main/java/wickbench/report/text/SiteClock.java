package wickbench.report.text;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Tells instants in the site's wall time, as in ISO 8601 with a blank for the T, with the offset of that moment. */
public record SiteClock(ZoneId zone) {
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm xxx", Locale.ROOT);
    private static final DateTimeFormatter SECONDS =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss xxx", Locale.ROOT);

    public String minutes(Instant instant) {
        return MINUTES.format(instant.atZone(zone));
    }

    public String seconds(Instant instant) {
        return SECONDS.format(instant.atZone(zone));
    }
}

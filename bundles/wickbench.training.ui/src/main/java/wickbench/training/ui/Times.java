package wickbench.training.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** Writes times by the clocks of a zone. */
final class Times {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private Times() {}

    static String minute(Instant at, ZoneId zone) {
        return MINUTE.format(at.atZone(zone));
    }
}

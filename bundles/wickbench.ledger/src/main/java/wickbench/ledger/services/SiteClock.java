package wickbench.ledger.services;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** Times as the clocks of the site showed them. */
record SiteClock(ZoneId zone) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");
    /** With the offset, since an autumn night has one hour twice. */
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss xxx");

    String minute(Instant time) {
        return MINUTE.format(time.atZone(zone));
    }

    String second(Instant time) {
        return SECOND.format(time.atZone(zone));
    }

    static String span(Duration span) {
        return LedgerWords.get("span", span.toMinutes(), span.toSecondsPart());
    }
}

package wickbench.plant.ui;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as the site's clocks show them. */
record SiteTimes(ZoneId zone) {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    String minute(Instant instant) {
        return MINUTE.format(instant.atZone(zone));
    }

    LocalDate day(Instant instant) {
        return LocalDate.ofInstant(instant, zone);
    }

    Instant endOf(LocalDate day) {
        return day.plusDays(1).atStartOfDay(zone).toInstant();
    }
}

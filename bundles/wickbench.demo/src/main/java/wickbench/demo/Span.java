package wickbench.demo;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * The days that are recorded.
 *
 * @param from the first day
 * @param until the day after the last one
 */
record Span(LocalDate from, LocalDate until, ZoneId zone) {

    /** Returns the day when {@code twelfths} twelfths of the span are over. */
    LocalDate after(int twelfths) {
        return from.plusDays(ChronoUnit.DAYS.between(from, until) * twelfths / 12);
    }

    List<LocalDate> days() {
        return from.datesUntil(until).toList();
    }

    Instant startOf(LocalDate day) {
        return day.atStartOfDay(zone).toInstant();
    }

    LocalDate dayOf(Instant instant) {
        return LocalDate.ofInstant(instant, zone);
    }
}

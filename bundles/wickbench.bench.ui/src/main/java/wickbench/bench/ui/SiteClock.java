package wickbench.bench.ui;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads and writes times as people at the bench do: today's as {@code 8:06} or {@code 8:06:30}, others with their date. */
record SiteClock(InstantSource clock, ZoneId zone) {
    private static final DateTimeFormatter TODAY = DateTimeFormatter.ofPattern("H:mm[:ss]", Locale.ROOT);
    private static final DateTimeFormatter NOW = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final DateTimeFormatter WHOLE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
    /** How far the clock on the wall may run before ours. */
    private static final Duration SLACK = Duration.ofMinutes(1);

    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    /** Returns this moment as one would type it. */
    String nowTyped() {
        return NOW.format(now().atZone(zone));
    }

    /** Returns an instant with its date, as the site's clocks show it. */
    String whole(Instant instant) {
        return WHOLE.format(instant.atZone(zone));
    }

    /**
     * Reads a time that has passed.
     *
     * @throws IllegalArgumentException saying what was expected
     */
    Instant past(String text) {
        Instant time = instant(text);
        if (time.isAfter(clock.instant().plus(SLACK))) {
            throw new IllegalArgumentException(BenchUiWords.get("time.future"));
        }
        return time;
    }

    /** Reads a time that may not be stated, or not readable yet. */
    Optional<Instant> stated(String text) {
        try {
            return Optional.of(text.strip()).filter(some -> !some.isEmpty()).map(this::past);
        } catch (IllegalArgumentException e) {
            // its field says what is wrong with it
            return Optional.empty();
        }
    }

    private Instant instant(String text) {
        if (text.length() <= "08:06:30".length()) {
            return local(
                    ZonedDateTime.ofInstant(clock.instant(), zone).toLocalDate().atTime(today(text)), text);
        }
        TemporalAccessor time = whole(text.replaceFirst("^(\\d{4}-\\d{2}-\\d{2}) ", "$1T"), text);
        return time instanceof OffsetDateTime withOffset ? withOffset.toInstant() : local((LocalDateTime) time, text);
    }

    private static LocalTime today(String text) {
        try {
            return LocalTime.parse(text, TODAY);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(BenchUiWords.get("time.expected"), e);
        }
    }

    private static TemporalAccessor whole(String iso, String text) {
        try {
            return DateTimeFormatter.ISO_DATE_TIME.parseBest(iso, OffsetDateTime::from, LocalDateTime::from);
        } catch (DateTimeException e) {
            throw new IllegalArgumentException(BenchUiWords.get("time.expected"), e);
        }
    }

    /** An hour that the site's clocks skip or repeat cannot be told from a bare local time. */
    private Instant local(LocalDateTime time, String text) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(time);
        if (offsets.size() != 1) {
            throw new IllegalArgumentException(
                    BenchUiWords.get(offsets.isEmpty() ? "time.skipped" : "time.repeated", text));
        }
        return time.toInstant(offsets.get(0));
    }
}

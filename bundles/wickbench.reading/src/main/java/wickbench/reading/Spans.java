package wickbench.reading;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Durations as findings write them. */
final class Spans {
    private static final long MINUTES_FROM = 600;
    private static final int MILLI_DIGITS = 3;

    private Spans() {}

    /** Returns for example {@code 299.5 s}. */
    static String seconds(Duration span) {
        return Decimals.text(inSeconds(span)) + " s";
    }

    /** Returns hours, minutes and seconds from ten minutes on, for example {@code 19 min 59 s}, and seconds below. */
    static String text(Duration span) {
        if (span.isNegative() || span.toSeconds() < MINUTES_FROM) {
            return seconds(span);
        }
        List<String> parts = new ArrayList<>();
        if (span.toHours() > 0) {
            parts.add(span.toHours() + " h");
        }
        if (span.toMinutesPart() > 0) {
            parts.add(span.toMinutesPart() + " min");
        }
        Duration rest = span.minusMinutes(span.toMinutes());
        if (!rest.isZero()) {
            parts.add(seconds(rest));
        }
        return String.join(" ", parts);
    }

    static BigDecimal inSeconds(Duration span) {
        return Decimals.plain(BigDecimal.valueOf(span.toMillis(), MILLI_DIGITS));
    }
}

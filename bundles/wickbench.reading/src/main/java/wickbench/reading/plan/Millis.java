package wickbench.reading.plan;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.temporal.ChronoUnit;

/** Plans are reckoned in whole milliseconds. */
final class Millis {
    private static final int DIGITS = 3;

    private Millis() {}

    static Duration whole(Duration span) {
        return span.truncatedTo(ChronoUnit.MILLIS);
    }

    static String text(Duration span) {
        BigDecimal seconds = BigDecimal.valueOf(span.toMillis(), DIGITS).stripTrailingZeros();
        return seconds.toPlainString() + " s";
    }
}

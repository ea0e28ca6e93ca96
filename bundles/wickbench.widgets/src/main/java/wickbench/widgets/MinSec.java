package wickbench.widgets;

import java.time.Duration;
import java.util.Locale;

/** Spans as a clock at the bench shows them. */
public final class MinSec {
    private MinSec() {}

    /** Returns for example {@code 3:12}; a span under way is rounded up, so that zero is zero. */
    public static String of(Duration span) {
        long seconds = Math.max(0, (span.toMillis() + 999) / 1000);
        return String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60);
    }
}

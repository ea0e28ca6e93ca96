package wickbench.bench.run;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method;
import wickbench.api.method.Seen;
import wickbench.api.reading.Reading;
import wickbench.api.reading.Strip;

/**
 * One strip of a run, as planned.
 *
 * @param number written on the strip; from 1
 * @param unread what is recorded if nobody ever looks at the strip: every line unreadable, no time of reading
 * @param develop from start to the earliest reading
 * @param window how long after that it may still be read
 * @param clean the clean before the sample
 * @param drawn this strip was drawn beforehand for a second reader, should it look negative
 */
public record RunStrip(
        int number, Reading unread, Duration develop, Duration window, Optional<Clean> clean, boolean drawn) {
    public RunStrip {
        if (number < 1) {
            throw new IllegalArgumentException("expected a number from 1 on, found " + number);
        }
    }

    /** Plans a strip whose reading is to follow; only what is known before the start is taken from {@code sample}. */
    public static RunStrip of(int number, Method method, Reading sample, Optional<Clean> clean, boolean drawn) {
        return new RunStrip(
                number, sample, method.timing().develop(), method.timing().window(), clean, drawn);
    }

    /** Returns the strip of a method as it stands in a record when nobody looked at it. */
    public static Strip unseen(Method method) {
        Map<LineRole, Seen> lines = new EnumMap<>(LineRole.class);
        method.format().lines().forEach(role -> lines.put(role, Seen.DAMAGED));
        return new Strip(method.format(), lines);
    }

    /** Returns how long after the start it may be read at the latest. */
    public Duration closes() {
        return develop.plus(window);
    }

    /** Returns the same strip under another number. */
    public RunStrip numbered(int other) {
        return new RunStrip(other, unread, develop, window, clean, drawn);
    }
}

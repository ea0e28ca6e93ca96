package wickbench.widgets;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Lengths of time in words. */
public final class Spans {
    private Spans() {}

    /** Returns for example {@code 5 min 30 s}; parts that are zero are left out. */
    public static String words(Duration span) {
        List<String> parts = new ArrayList<>();
        part(parts, span.toHours(), "span.hours");
        part(parts, span.toMinutesPart(), "span.minutes");
        if (parts.isEmpty() || span.toSecondsPart() > 0) {
            parts.add(WidgetWords.get("span.seconds", span.toSecondsPart()));
        }
        return String.join(" ", parts);
    }

    private static void part(List<String> parts, long value, String key) {
        if (value > 0) {
            parts.add(WidgetWords.get(key, value));
        }
    }
}

package wickbench.drill;

import wickbench.api.words.Coded;

/**
 * A strip to be shown.
 *
 * @param number counted from 1
 * @param kind what it is shown for
 * @param contrast of its test line, 0 where there is none
 * @param seed of its picture
 */
public record Shown(int number, Kind kind, double contrast, long seed) {
    /** What a strip is shown for. */
    public enum Kind implements Coded {
        /** No line, to count false alarms. */
        BLANK,
        /** A line nobody misses who looks, to count lapses. */
        PLAIN,
        /** The line that will tell most. */
        FAINT
    }
}

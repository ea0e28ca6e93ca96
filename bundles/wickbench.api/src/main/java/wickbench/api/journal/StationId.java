package wickbench.api.journal;

import wickbench.api.words.Spelling;

/**
 * The name of a station: one machine that keeps a journal.
 *
 * @param value 1 to 32 lower-case letters, digits or hyphens, beginning with a letter
 */
public record StationId(String value) implements Comparable<StationId> {
    private static final int LONGEST = 32;

    public StationId {
        if (!Spelling.isId(value, LONGEST, "-") || Spelling.isDigit(value.charAt(0))) {
            throw new IllegalArgumentException(
                    "expected a station name of lower-case letters, digits and hyphens, found '" + value + "'");
        }
    }

    @Override
    public int compareTo(StationId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}

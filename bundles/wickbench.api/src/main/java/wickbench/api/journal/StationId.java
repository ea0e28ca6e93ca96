package wickbench.api.journal;

import java.util.regex.Pattern;

/**
 * The name of a station: one machine that keeps a journal.
 *
 * @param value 1 to 32 lower-case letters, digits or hyphens, beginning with a letter
 */
public record StationId(String value) implements Comparable<StationId> {
    private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9-]{0,31}");

    public StationId {
        if (!FORM.matcher(value).matches()) {
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

package wickbench.api.method;

import wickbench.api.words.Spelling;

/**
 * The site's short name of a method, the same through all its versions.
 *
 * @param value 1 to 40 lower-case letters, digits, dots, hyphens or underscores, beginning with a letter or digit
 */
public record MethodId(String value) implements Comparable<MethodId> {
    private static final int LONGEST = 40;

    public MethodId {
        if (!Spelling.isId(value, LONGEST, "._-")) {
            throw new IllegalArgumentException(
                    "expected a method id of lower-case letters, digits, dots, hyphens and underscores, found '" + value
                            + "'");
        }
    }

    @Override
    public int compareTo(MethodId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}

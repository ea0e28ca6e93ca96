package wickbench.api.method;

import java.util.regex.Pattern;

/**
 * The site's short name of a method, the same through all its versions.
 *
 * @param value 1 to 40 lower-case letters, digits, dots, hyphens or underscores, beginning with a letter or digit
 */
public record MethodId(String value) implements Comparable<MethodId> {
    private static final Pattern FORM = Pattern.compile("[a-z0-9][a-z0-9._-]{0,39}");

    public MethodId {
        if (!FORM.matcher(value).matches()) {
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

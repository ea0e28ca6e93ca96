package wickbench.api.person;

import java.util.regex.Pattern;

/**
 * How entries name a person: a short id that says nothing about them.
 *
 * @param value 1 to 32 lower-case letters, digits, dots or hyphens, beginning with a letter
 */
public record PersonId(String value) implements Comparable<PersonId> {
    private static final Pattern FORM = Pattern.compile("[a-z][a-z0-9.-]{0,31}");

    public PersonId {
        if (!FORM.matcher(value).matches()) {
            throw new IllegalArgumentException(
                    "expected a person id of lower-case letters, digits, dots and hyphens, found '" + value + "'");
        }
    }

    @Override
    public int compareTo(PersonId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}

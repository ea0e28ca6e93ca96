package wickbench.api.person;

import wickbench.api.words.Spelling;

/**
 * How entries name a person: a short id that says nothing about them.
 *
 * @param value 1 to 32 lower-case letters, digits, dots, hyphens or underscores, beginning with a letter or digit
 */
public record PersonId(String value) implements Comparable<PersonId> {
    private static final int LONGEST = 32;

    public PersonId {
        if (!Spelling.isId(value, LONGEST, "._-")) {
            throw new IllegalArgumentException(
                    "expected a person id of lower-case letters, digits, dots, hyphens and underscores, found '" + value
                            + "'");
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

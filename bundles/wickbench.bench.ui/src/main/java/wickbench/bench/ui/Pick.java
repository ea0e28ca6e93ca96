package wickbench.bench.ui;

import java.util.Locale;

/**
 * Something to choose.
 *
 * @param value what is put into the field
 * @param words what it is
 */
record Pick(String value, String words) {
    /** Tells whether it is among what the typed letters may mean. */
    boolean fits(String typed) {
        return (value + " " + words)
                .toLowerCase(Locale.ROOT)
                .contains(typed.strip().toLowerCase(Locale.ROOT));
    }

    boolean is(String typed) {
        return value.equalsIgnoreCase(typed.strip()) || words.equalsIgnoreCase(typed.strip());
    }
}

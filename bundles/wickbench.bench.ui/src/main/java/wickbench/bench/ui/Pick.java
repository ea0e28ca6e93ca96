package wickbench.bench.ui;

import java.util.Locale;

/**
 * Something to choose.
 *
 * @param value what is put into the field
 * @param words what it is, and why it may not be used, if so
 * @param may whether it may be used
 */
record Pick(String value, String words, boolean may) {
    Pick(String value, String words) {
        this(value, words, true);
    }

    /** Returns the same with what speaks against it. */
    Pick not(String why) {
        return new Pick(value, FlowWords.get("pick.not", words, why), false);
    }

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

package wickbench.ledger.pack;

import wickbench.api.words.Words;

/** The words of this package. */
final class PackWords {
    private PackWords() {}

    /** Looked up anew each time, because the user may change the language. */
    static String get(String key, Object... values) {
        return Words.of(PackWords.class, "ledger-pack").get(key, values);
    }
}

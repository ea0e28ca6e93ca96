package wickbench.ledger.papers;

import wickbench.api.words.Words;

/** The words of this package. */
final class PapersWords {
    private PapersWords() {}

    /** Looked up anew each time, because the user may change the language. */
    static String get(String key, Object... values) {
        return Words.of(PapersWords.class, "ledger-papers").get(key, values);
    }
}

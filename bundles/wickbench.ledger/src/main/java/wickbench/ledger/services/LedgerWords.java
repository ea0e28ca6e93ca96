package wickbench.ledger.services;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class LedgerWords {
    private LedgerWords() {}

    /** Looked up anew each time, because the user may change the language. */
    static String get(String key, Object... values) {
        return Words.of(LedgerWords.class, "ledger").get(key, values);
    }
}

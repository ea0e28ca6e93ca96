package wickbench.ledger.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class LedgerUiWords {
    private LedgerUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(LedgerUiWords.class, "ledger-ui").get(key, values);
    }
}

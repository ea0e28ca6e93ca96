package wickbench.journal.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class JournalUiWords {
    private JournalUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(JournalUiWords.class, "journal-ui").get(key, values);
    }
}

package wickbench.parts.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class PartsUiWords {
    private PartsUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(PartsUiWords.class, "parts-ui").get(key, values);
    }
}

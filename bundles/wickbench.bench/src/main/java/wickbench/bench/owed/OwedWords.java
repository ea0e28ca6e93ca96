package wickbench.bench.owed;

import wickbench.api.words.Words;

/** The words for what is owed. */
final class OwedWords {
    private static final Words WORDS = Words.of(OwedWords.class, "owed");

    private OwedWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

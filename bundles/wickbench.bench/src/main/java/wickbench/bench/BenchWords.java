package wickbench.bench;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class BenchWords {
    private static final Words WORDS = Words.of(BenchWords.class, "bench");

    private BenchWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

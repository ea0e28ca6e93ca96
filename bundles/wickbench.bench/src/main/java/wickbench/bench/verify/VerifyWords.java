package wickbench.bench.verify;

import wickbench.api.words.Words;

/** The words of this package. */
final class VerifyWords {
    private VerifyWords() {}

    static String get(String key, Object... values) {
        return Words.of(VerifyWords.class, "evidence").get(key, values);
    }
}

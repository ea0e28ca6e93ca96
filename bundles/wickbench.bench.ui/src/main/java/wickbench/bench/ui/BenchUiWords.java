package wickbench.bench.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class BenchUiWords {
    private BenchUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(BenchUiWords.class, "bench-ui").get(key, values);
    }
}

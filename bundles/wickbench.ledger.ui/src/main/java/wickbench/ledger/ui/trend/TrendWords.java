package wickbench.ledger.ui.trend;

import wickbench.api.words.Words;

/** The words of this page. */
final class TrendWords {
    private TrendWords() {}

    static String get(String key, Object... values) {
        return Words.of(TrendWords.class, "trend-ui").get(key, values);
    }
}

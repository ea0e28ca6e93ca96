package wickbench.stock.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class StockUiWords {
    private StockUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(StockUiWords.class, "stock-ui").get(key, values);
    }
}

package wickbench.stock.room;

import wickbench.api.words.Words;

/** The words of this bundle. */
public final class StockWords {
    private StockWords() {}

    /** Looked up anew each time, because the user may change the language. */
    public static String get(String key, Object... values) {
        return Words.of(StockWords.class, "stock").get(key, values);
    }
}

package wickbench.widgets;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class WidgetWords {
    private WidgetWords() {}

    static String get(String key, Object... values) {
        return Words.of(WidgetWords.class, "widgets").get(key, values);
    }
}

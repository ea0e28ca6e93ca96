package wickbench.figures.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class FiguresUiWords {
    private FiguresUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(FiguresUiWords.class, "figures-ui").get(key, values);
    }
}

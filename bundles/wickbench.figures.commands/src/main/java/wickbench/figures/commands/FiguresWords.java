package wickbench.figures.commands;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class FiguresWords {
    private static final Words WORDS = Words.of(FiguresWords.class, "figures-commands");

    private FiguresWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

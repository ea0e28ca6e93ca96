package wickbench.figures.sums;

import wickbench.api.words.Words;

/** The words of the sums. */
final class SumWords {
    private static final Words WORDS = Words.of(SumWords.class, "figures-sums");

    private SumWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }

    static boolean has(String key) {
        return WORDS.has(key);
    }

    /**
     * Returns the words that a sum has of its own, else those that all sums share.
     *
     * @param kind how the key begins, with its point
     */
    static String own(String kind, String sum, String name) {
        String own = kind + sum + "." + name;
        return WORDS.get(WORDS.has(own) ? own : kind + name);
    }
}

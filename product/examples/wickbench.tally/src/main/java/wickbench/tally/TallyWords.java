package wickbench.tally;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class TallyWords {
    private static final Words WORDS = Words.of(TallyWords.class, "tally");

    private TallyWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

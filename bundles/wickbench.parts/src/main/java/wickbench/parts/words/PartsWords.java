package wickbench.parts.words;

import wickbench.api.check.Refusal;
import wickbench.api.words.Words;

/** The words of this bundle, and refusals in them. */
public final class PartsWords {
    private static final Words WORDS = Words.of(PartsWords.class, "parts");

    private PartsWords() {}

    public static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }

    /** Returns a refusal whose code is also the key of its words. */
    public static Refusal refusal(String code, Object... values) {
        return new Refusal(code, WORDS.get(code, values));
    }
}

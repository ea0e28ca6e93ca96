package wickbench.bench.plan;

import wickbench.api.words.Words;

/** The words of plans. */
final class PlanWords {
    private static final Words WORDS = Words.of(PlanWords.class, "plan");

    private PlanWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

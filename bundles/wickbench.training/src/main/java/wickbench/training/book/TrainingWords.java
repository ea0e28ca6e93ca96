package wickbench.training.book;

import wickbench.api.words.Words;

/** The words of this bundle. */
public final class TrainingWords {
    private TrainingWords() {}

    /** Looked up anew each time, because the user may change the language. */
    public static String get(String key, Object... values) {
        return Words.of(TrainingWords.class, "training").get(key, values);
    }
}

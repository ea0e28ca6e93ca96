package wickbench.training.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class TrainingUiWords {
    private TrainingUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(TrainingUiWords.class, "training-ui").get(key, values);
    }
}

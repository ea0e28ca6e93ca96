package wickbench.plant.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class PlantUiWords {
    private PlantUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(PlantUiWords.class, "plant-ui").get(key, values);
    }
}

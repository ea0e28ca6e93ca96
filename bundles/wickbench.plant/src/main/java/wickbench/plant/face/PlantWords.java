package wickbench.plant.face;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class PlantWords {
    private static final Words WORDS = Words.of(PlantWords.class, "plant");

    private PlantWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

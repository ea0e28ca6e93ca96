package wickbench.plant.terms;

import wickbench.api.words.Words;

/** The words of this bundle. */
public final class PlantWords {
    private PlantWords() {}

    /** Looked up anew each time, because the user may change the language. */
    public static String get(String key, Object... values) {
        return Words.of(PlantWords.class, "plant").get(key, values);
    }
}

package wickbench.people;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class PeopleWords {
    private static final Words WORDS = Words.of(PeopleWords.class, "people");

    private PeopleWords() {}

    static String get(String key, Object... values) {
        return WORDS.get(key, values);
    }
}

package wickbench.people.ui;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class PeopleUiWords {
    private PeopleUiWords() {}

    static String get(String key, Object... values) {
        return Words.of(PeopleUiWords.class, "people-ui").get(key, values);
    }
}

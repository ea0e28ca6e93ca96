package wickbench.shell;

import wickbench.api.words.Words;

/** The words of this bundle. */
final class ShellWords {
    private ShellWords() {}

    static String get(String key, Object... values) {
        return Words.of(ShellWords.class, "shell").get(key, values);
    }
}

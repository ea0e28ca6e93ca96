package wickbench.bench.ui.editor;

import wickbench.api.words.Words;

/** The words of the editor. */
final class EditorWords {
    private EditorWords() {}

    static String get(String key, Object... values) {
        return Words.of(EditorWords.class, "method-editor").get(key, values);
    }
}

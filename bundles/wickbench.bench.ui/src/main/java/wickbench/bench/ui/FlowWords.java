package wickbench.bench.ui;

import wickbench.api.words.Words;

/** The words of a run on the page. */
final class FlowWords {
    private FlowWords() {}

    static String get(String key, Object... values) {
        return Words.of(FlowWords.class, "flow").get(key, values);
    }
}

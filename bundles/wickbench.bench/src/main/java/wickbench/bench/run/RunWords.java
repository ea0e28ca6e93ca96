package wickbench.bench.run;

import wickbench.api.words.Words;

/** The words of runs. */
final class RunWords {
    private RunWords() {}

    static String get(String key, Object... values) {
        return Words.of(RunWords.class, "run").get(key, values);
    }
}

package wickbench.report;

import wickbench.api.words.Words;

/** The words of this bundle, in the language of the user. */
public final class ReportWords {
    private ReportWords() {}

    public static String get(String key, Object... values) {
        return Words.of(ReportWords.class, "report").get(key, values);
    }
}

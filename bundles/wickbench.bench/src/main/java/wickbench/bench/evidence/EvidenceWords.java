package wickbench.bench.evidence;

import wickbench.api.words.Words;

/** The words of this package. */
final class EvidenceWords {
    private EvidenceWords() {}

    static String get(String key, Object... values) {
        return Words.of(EvidenceWords.class, "evidence").get(key, values);
    }
}

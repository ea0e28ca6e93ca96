package wickbench.journal;

import wickbench.api.check.Refusal;
import wickbench.api.words.Words;

/** The words of this bundle. */
final class Say {
    static final String HELD = "home.held";
    static final String FAILED = "journal.failed";
    static final String TAMPERED = "journal.tampered";

    private Say() {}

    static String words(String key, Object... values) {
        return Words.of(Say.class, "journal").get(key, values);
    }

    static Refusal tampered(String key, Object... values) {
        return new Refusal(TAMPERED, words("tampered", words(key, values)));
    }

    static Refusal failed(String reason) {
        return new Refusal(FAILED, reason);
    }
}

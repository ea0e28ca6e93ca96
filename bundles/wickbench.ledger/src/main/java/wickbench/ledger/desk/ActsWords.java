package wickbench.ledger.desk;

import wickbench.api.words.Words;

/** What the rules of this package say. */
final class ActsWords {
    private ActsWords() {}

    /** Looked up anew each time, because the user may change the language. */
    static String get(String key, Object... values) {
        return Words.of(ActsWords.class, "ledger-acts").get(key, values);
    }
}

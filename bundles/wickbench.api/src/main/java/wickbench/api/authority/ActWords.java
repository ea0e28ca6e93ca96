package wickbench.api.authority;

import wickbench.api.words.Words;

/** Acts in words, as in "signed to issue a method"; what a signature means stands beside it in these (21 CFR 11.50(a)(3)). */
public final class ActWords {
    private static final Words WORDS = Words.of(ActWords.class, "acts");

    private ActWords() {}

    /** Returns what the act does, without a subject. */
    public static String text(Act act) {
        return WORDS.get(act.code());
    }
}

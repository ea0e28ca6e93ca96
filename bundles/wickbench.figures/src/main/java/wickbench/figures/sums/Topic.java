package wickbench.figures.sums;

import wickbench.api.words.Coded;

/** What sums are about, in the order in which a page lists them. */
public enum Topic implements Coded {
    SHARES,
    DETECTION,
    AGREEMENT,
    SEEING,
    SAMPLING,
    TREND,
    STORE,
    LEVELS;

    /** Returns the question that these sums answer. */
    public String title() {
        return SumWords.get("topic." + code());
    }
}

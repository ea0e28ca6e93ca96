package wickbench.figures.sums;

/**
 * Something to say about an answer.
 *
 * @param text in the language of the user
 */
public record Remark(Kind kind, String text) {

    /** Why it is said. */
    public enum Kind {
        /** The answer in words. */
        RESULT,
        /** The formula and where it is published. */
        FORMULA,
        /** What the answer does not say. */
        CAUTION
    }
}

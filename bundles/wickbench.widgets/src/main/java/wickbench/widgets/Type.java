package wickbench.widgets;

/** The steps of the type scale; heights in design pixels. */
public enum Type {
    /** Explanations, column heads, units. */
    SMALL(12, false, false),
    /** Everything else. */
    BODY(13.5, false, false),
    /** Words that matter in a body text. */
    STRONG(13.5, true, false),
    /** Over a group. */
    HEADING(16, true, false),
    /** Over a page; once. */
    TITLE(22, true, false),
    /** A figure or word to be read from across the bench. */
    LARGE(32, true, false),
    /** Digits that line up, hashes, times. */
    MONO(13, false, true);

    private final double pixels;
    private final boolean bold;
    private final boolean fixed;

    Type(double pixels, boolean bold, boolean fixed) {
        this.pixels = pixels;
        this.bold = bold;
        this.fixed = fixed;
    }

    double pixels() {
        return pixels;
    }

    boolean bold() {
        return bold;
    }

    boolean fixed() {
        return fixed;
    }
}

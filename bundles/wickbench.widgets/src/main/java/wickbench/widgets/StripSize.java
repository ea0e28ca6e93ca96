package wickbench.widgets;

/** How large a strip is drawn. */
public enum StripSize {
    /** To be read and answered: marks at the left, words at the right. */
    LARGE(400, 320),
    /** To be recognised beside a result: lines and marks only. */
    SMALL(56, 104);

    private final int width;
    private final int height;

    StripSize(int width, int height) {
        this.width = width;
        this.height = height;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }
}

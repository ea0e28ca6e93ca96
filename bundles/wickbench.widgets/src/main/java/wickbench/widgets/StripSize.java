package wickbench.widgets;

/** How large a strip is drawn. */
public enum StripSize {
    /** To be read and answered: marks at the left, words at the right. */
    LARGE(372, 320),
    /** As large, where its room is too low for that: the window with its lines, without the port. */
    MIDDLE(372, 172),
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

    boolean inWords() {
        return this != SMALL;
    }
}

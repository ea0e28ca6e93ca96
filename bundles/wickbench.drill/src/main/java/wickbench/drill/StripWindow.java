package wickbench.drill;

import wickbench.figures.Inputs;

/**
 * Where things lie in the window of a drawn strip, in pixels; the control line is the upper one.
 *
 * @param line how thick a line is, which sets the scale of everything
 */
public record StripWindow(int line) {
    private static final int WIDTH = 6;
    private static final int HEIGHT = 22;
    private static final int CONTROL = 6;
    private static final int TEST = 15;

    public StripWindow {
        Inputs.whole("line", line, 4, 64);
    }

    public int width() {
        return WIDTH * line;
    }

    public int height() {
        return HEIGHT * line;
    }

    /** Returns the first row of the control line. */
    public int control() {
        return CONTROL * line;
    }

    /** Returns the first row of the test line. */
    public int test() {
        return TEST * line;
    }
}

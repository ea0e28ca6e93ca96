package wickbench.figures.sampling;

import java.util.function.DoubleUnaryOperator;

/** Finds where a function that falls crosses a level, to the last digit of a double. */
final class Falling {
    private Falling() {}

    static double crossing(DoubleUnaryOperator falling, double level, double from, double to) {
        double above = from;
        double below = to;
        double middle = above + (below - above) / 2;
        while (middle > above && middle < below) {
            if (falling.applyAsDouble(middle) > level) {
                above = middle;
            } else {
                below = middle;
            }
            middle = above + (below - above) / 2;
        }
        return middle;
    }
}

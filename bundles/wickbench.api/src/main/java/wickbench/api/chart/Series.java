package wickbench.api.chart;

/**
 * One series of points; the arrays are not copied and must not be changed afterwards.
 *
 * @param x values in ascending order
 * @param y values, as many as x; NaN leaves a gap
 */
public record Series(String name, Mark mark, double[] x, double[] y) {

    /** How a series is drawn. */
    public enum Mark {
        /** From point to point. */
        LINE,
        /** Each value stands until the next. */
        STEPS,
        /** Each point for itself. */
        POINTS,
        /** From point to point, each point marked. */
        LINE_AND_POINTS,
        /** From zero up or down. */
        BARS
    }

    public Series {
        if (x.length != y.length) {
            throw new IllegalArgumentException("x has " + x.length + " values, y has " + y.length);
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || i > 0 && x[i] < x[i - 1]) {
                throw new IllegalArgumentException("x must ascend; it does not at " + i + ": " + x[i]);
            }
        }
    }

    public int size() {
        return x.length;
    }

    /** Returns the first place whose x is not below {@code value}; the size when there is none. */
    public int firstFrom(double value) {
        int low = 0;
        int high = x.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x[middle] < value) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}

package wickbench.report.chart;

import java.util.Arrays;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Series;
import wickbench.api.chart.Span;

/**
 * The points of a series that make a difference to the eye.
 *
 * <p>Of all points in a column of pixels the first, the last, the least and the greatest stay, in their order; so the drawing
 * is the same and no extreme is lost. A gap stays a gap. One point beyond either end of the window stays, so that lines run on.
 */
record Thinned(double[] x, double[] y) {

    /**
     * Thins a series.
     *
     * @param window what of the axis is drawn
     * @param columns at least as many as the drawing has columns of pixels
     */
    static Thinned of(Series series, Axis.Scale xScale, Axis.Scale yScale, Span window, int columns) {
        int from = Math.max(0, series.firstFrom(window.low()) - 1);
        int to = series.firstFrom(Math.nextUp(window.high()));
        Collector out = new Collector(Math.min(to - from + 1, columns * Collector.MOST + 2 * Collector.MOST));
        int column = Integer.MIN_VALUE;
        for (int i = from; i < Math.min(series.size(), to + 1); i++) {
            int next = column(series.x()[i], xScale, window, columns);
            if (next != column) {
                out.endColumn();
                column = next;
            }
            out.add(series.x()[i], drawable(series.y()[i], yScale));
        }
        out.endColumn();
        return out.points();
    }

    private static int column(double x, Axis.Scale scale, Span window, int columns) {
        double part = scale instanceof Axis.Logarithmic
                ? Math.log(x / window.low()) / Math.log(window.high() / window.low())
                : (x - window.low()) / window.length();
        return (int) Math.floor(Math.max(-1, Math.min(columns, part * columns)));
    }

    private static double drawable(double y, Axis.Scale scale) {
        return !Double.isFinite(y) || scale instanceof Axis.Logarithmic && y <= 0 ? Double.NaN : y;
    }

    /** Collects what stays of each column: what stands before its first gap, and what stands behind. */
    private static final class Collector {
        /** Four points, a gap, four points, a gap. */
        static final int MOST = 10;

        private final Few before = new Few();
        private final Few behind = new Few();
        private double[] x;
        private double[] y;
        private int size;
        private boolean gap;
        private boolean endsInGap;
        private double gapAt;
        private double lastGapAt;

        Collector(int capacity) {
            x = new double[Math.max(MOST, capacity)];
            y = new double[Math.max(MOST, capacity)];
        }

        void add(double atX, double value) {
            endsInGap = Double.isNaN(value);
            if (!endsInGap) {
                (gap ? behind : before).add(atX, value);
            } else {
                lastGapAt = atX;
                gapAt = gap ? gapAt : atX;
                gap = true;
            }
        }

        void endColumn() {
            before.moveTo(this);
            if (gap) {
                point(gapAt, Double.NaN);
            }
            boolean more = behind.count > 0;
            behind.moveTo(this);
            if (more && endsInGap) {
                point(lastGapAt, Double.NaN);
            }
            gap = false;
            endsInGap = false;
        }

        void point(double atX, double value) {
            if (size == x.length) {
                x = Arrays.copyOf(x, 2 * size);
                y = Arrays.copyOf(y, 2 * size);
            }
            x[size] = atX;
            y[size++] = value;
        }

        Thinned points() {
            return new Thinned(Arrays.copyOf(x, size), Arrays.copyOf(y, size));
        }
    }

    /** The first, last, least and greatest of some points. */
    private static final class Few {
        private int count;
        private int leastAt;
        private int greatestAt;
        private final double[] x = new double[4];
        private final double[] y = new double[4];

        void add(double atX, double value) {
            if (count == 0) {
                keep(0, atX, value);
                keep(1, atX, value);
                keep(2, atX, value);
                leastAt = 0;
                greatestAt = 0;
            } else if (value < y[1]) {
                keep(1, atX, value);
                leastAt = count;
            } else if (value > y[2]) {
                keep(2, atX, value);
                greatestAt = count;
            }
            keep(3, atX, value);
            count++;
        }

        void moveTo(Collector out) {
            if (count > 0) {
                out.point(x[0], y[0]);
                between(out, Math.min(leastAt, greatestAt));
                if (leastAt != greatestAt) {
                    between(out, Math.max(leastAt, greatestAt));
                }
            }
            if (count > 1) {
                out.point(x[3], y[3]);
            }
            count = 0;
        }

        private void between(Collector out, int at) {
            int slot = at == leastAt ? 1 : 2;
            if (at > 0 && at < count - 1) {
                out.point(x[slot], y[slot]);
            }
        }

        private void keep(int slot, double atX, double value) {
            x[slot] = atX;
            y[slot] = value;
        }
    }
}

package wickbench.report.chart;

import java.util.Arrays;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Series;

/**
 * The values of a series as they can be drawn, with the extremes of each block of them.
 *
 * <p>Built once, in the time of all points; afterwards any stretch is summed up in the time of its blocks. Cannot change, so
 * every thread may read it.
 */
final class Extremes {
    private static final int BLOCK = 64;

    private final double[] x;
    private final double[] y;
    private final Stretch[] blocks;

    private Extremes(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        blocks = new Stretch[x.length / BLOCK];
        for (int block = 0; block < blocks.length; block++) {
            blocks[block] = new Stretch();
            for (int i = block * BLOCK; i < (block + 1) * BLOCK; i++) {
                blocks[block].add(y, i);
            }
        }
    }

    /** Reads a series; what an axis cannot show becomes a gap. */
    static Extremes of(Series series, Axis.Scale yScale) {
        double[] all = series.y();
        boolean clean = Arrays.stream(all).allMatch(y -> Double.isNaN(y) || drawable(y, yScale));
        return new Extremes(
                series.x(),
                clean
                        ? all
                        : Arrays.stream(all)
                                .map(y -> drawable(y, yScale) ? y : Double.NaN)
                                .toArray());
    }

    private static boolean drawable(double y, Axis.Scale scale) {
        return Double.isFinite(y) && !(scale instanceof Axis.Logarithmic && y <= 0);
    }

    int size() {
        return x.length;
    }

    double x(int i) {
        return x[i];
    }

    double y(int i) {
        return y[i];
    }

    boolean gap(int i) {
        return Double.isNaN(y[i]);
    }

    /** Returns the first place from {@code from} on that is a gap; {@code to} when there is none before it. */
    int firstGap(int from, int to) {
        int i = from;
        while (i < to && !gap(i)) {
            boolean whole = i % BLOCK == 0 && i + BLOCK <= to && blocks[i / BLOCK].lastGap < 0;
            i += whole ? BLOCK : 1;
        }
        return i;
    }

    /** Sums up the points from one place up to another, gaps left aside. */
    Stretch stretch(int from, int to) {
        Stretch sum = new Stretch();
        int i = from;
        while (i < to) {
            if (i % BLOCK == 0 && i + BLOCK <= to) {
                sum.add(y, blocks[i / BLOCK]);
                i += BLOCK;
            } else {
                sum.add(y, i++);
            }
        }
        return sum;
    }

    /** The places of the first, last, least and greatest of some points, and of their last gap; -1 when there is none. */
    static final class Stretch {
        int first = -1;
        int last = -1;
        int least = -1;
        int greatest = -1;
        int lastGap = -1;

        private void add(double[] y, int i) {
            if (Double.isNaN(y[i])) {
                lastGap = i;
            } else {
                add(y, i, i, i, i);
            }
        }

        private void add(double[] y, Stretch next) {
            lastGap = Math.max(lastGap, next.lastGap);
            if (next.first >= 0) {
                add(y, next.first, next.last, next.least, next.greatest);
            }
        }

        private void add(double[] y, int itsFirst, int itsLast, int itsLeast, int itsGreatest) {
            boolean none = first < 0;
            first = none ? itsFirst : first;
            last = itsLast;
            least = none || y[itsLeast] < y[least] ? itsLeast : least;
            greatest = none || y[itsGreatest] > y[greatest] ? itsGreatest : greatest;
        }
    }
}

package wickbench.report.chart;

import java.util.stream.IntStream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Span;

/**
 * The points of a series that make a difference to the eye.
 *
 * <p>Of all points in a column of pixels the first, the last, the least and the greatest stay, in their order; so the drawing
 * is the same and no extreme is lost. No more points than there are columns all stay: many marks may stand above one another. A
 * gap stays a gap. One point beyond either end of the window stays, so that lines run on.
 *
 * @param dense whether points were left out
 */
record Thinned(double[] x, double[] y, boolean dense) {

    /**
     * Thins a series in the time of the columns.
     *
     * @param window what of the axis is drawn
     * @param columns at least as many as the drawing has columns of pixels
     */
    static Thinned of(Extremes all, Axis.Scale xScale, Span window, int columns) {
        return new Thinning(all, new Columns(xScale, window, columns)).thinned();
    }

    /** The columns of pixels that a window is drawn in; what lies before has the number -1, what lies behind their count. */
    private record Columns(Axis.Scale scale, Span window, int count) {
        int of(double x) {
            double part = scale instanceof Axis.Logarithmic
                    ? Math.log(x / window.low()) / Math.log(window.high() / window.low())
                    : (x - window.low()) / window.length();
            return (int) Math.floor(Math.max(-1, Math.min(count, part * count)));
        }
    }

    /** Collects the places of what stays. */
    private static final class Thinning {
        private final Extremes all;
        private final Columns columns;
        private final IntStream.Builder stay = IntStream.builder();

        Thinning(Extremes all, Columns columns) {
            this.all = all;
            this.columns = columns;
        }

        Thinned thinned() {
            int from = Math.max(0, first(0, all.size(), columns.window().low()) - 1);
            int to = Math.min(
                    all.size(),
                    first(from, all.size(), Math.nextUp(columns.window().high())) + 1);
            int[] places =
                    to - from <= columns.count() ? IntStream.range(from, to).toArray() : thinned(from, to);
            double[] x = IntStream.of(places).mapToDouble(all::x).toArray();
            double[] y = IntStream.of(places).mapToDouble(all::y).toArray();
            return new Thinned(x, y, places.length < to - from);
        }

        private int[] thinned(int from, int to) {
            for (int i = from; i < to; ) {
                int next = endOfColumn(i, to);
                column(i, next);
                i = next;
            }
            return stay.build().toArray();
        }

        private int first(int from, int to, double x) {
            int low = from;
            int high = to;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (all.x(middle) < x) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }

        /** Looks ahead in ever longer steps, then closes in. */
        private int endOfColumn(int from, int to) {
            int column = columns.of(all.x(from));
            int step = 1;
            while (from + step < to && columns.of(all.x(from + step)) == column) {
                step *= 2;
            }
            int low = from + step / 2 + 1;
            int high = Math.min(to, from + step);
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (columns.of(all.x(middle)) == column) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }

        /** Keeps what stands before the first gap, the gap, what stands behind it, and a gap at the end. */
        private void column(int from, int to) {
            int gap = all.firstGap(from, to);
            keep(all.stretch(from, gap));
            if (gap == to) {
                return;
            }
            stay.add(gap);
            Extremes.Stretch behind = all.stretch(gap + 1, to);
            keep(behind);
            if (behind.first >= 0 && all.gap(to - 1)) {
                stay.add(to - 1);
            }
        }

        private void keep(Extremes.Stretch few) {
            if (few.first >= 0) {
                IntStream.of(few.first, Math.min(few.least, few.greatest), Math.max(few.least, few.greatest), few.last)
                        .distinct()
                        .forEach(stay::add);
            }
        }
    }
}

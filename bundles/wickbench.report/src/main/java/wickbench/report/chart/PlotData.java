package wickbench.report.chart;

import org.jfree.data.xy.AbstractIntervalXYDataset;
import org.jfree.data.xy.IntervalXYDataset;
import wickbench.api.chart.Series;

/** One series, thinned, as the drawing library reads it; bars are as wide as their neighbours allow. */
final class PlotData extends AbstractIntervalXYDataset implements IntervalXYDataset {
    private static final long serialVersionUID = 1L;
    /** How much of the distance between two bars is filled. */
    private static final double FILLED = 0.8;

    private final String name;
    private final transient Thinned points;
    private final double width;
    private final double shift;

    /**
     * @param place of this series among those drawn as bars
     * @param bars how many are
     */
    PlotData(String name, Series.Mark mark, Thinned points, int place, int bars) {
        this.name = name;
        this.points = mark == Series.Mark.STEPS ? steps(points) : points;
        double room = FILLED * nearest(points.x());
        this.width = room / Math.max(1, bars);
        this.shift = mark == Series.Mark.BARS ? (place + 0.5) * width - room / 2 : 0;
    }

    @Override
    public int getSeriesCount() {
        return 1;
    }

    @Override
    public Comparable<?> getSeriesKey(int series) {
        return name;
    }

    @Override
    public int getItemCount(int series) {
        return points.x().length;
    }

    @Override
    public double getXValue(int series, int item) {
        return points.x()[item] + shift;
    }

    @Override
    public double getYValue(int series, int item) {
        return points.y()[item];
    }

    @Override
    public double getStartXValue(int series, int item) {
        return getXValue(series, item) - width / 2;
    }

    @Override
    public double getEndXValue(int series, int item) {
        return getXValue(series, item) + width / 2;
    }

    @Override
    public double getStartYValue(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public double getEndYValue(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public Number getX(int series, int item) {
        return getXValue(series, item);
    }

    @Override
    public Number getY(int series, int item) {
        return getYValue(series, item);
    }

    @Override
    public Number getStartX(int series, int item) {
        return getStartXValue(series, item);
    }

    @Override
    public Number getEndX(int series, int item) {
        return getEndXValue(series, item);
    }

    @Override
    public Number getStartY(int series, int item) {
        return getStartYValue(series, item);
    }

    @Override
    public Number getEndY(int series, int item) {
        return getEndYValue(series, item);
    }

    /** Each value stands until the next. */
    private static Thinned steps(Thinned points) {
        int count = points.x().length;
        double[] x = new double[Math.max(0, 2 * count - 1)];
        double[] y = new double[x.length];
        for (int i = 0; i < count; i++) {
            x[2 * i] = points.x()[i];
            y[2 * i] = points.y()[i];
            if (i + 1 < count) {
                x[2 * i + 1] = points.x()[i + 1];
                y[2 * i + 1] = points.y()[i];
            }
        }
        return new Thinned(x, y, points.dense());
    }

    private static double nearest(double[] x) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < x.length; i++) {
            if (x[i] > x[i - 1]) {
                least = Math.min(least, x[i] - x[i - 1]);
            }
        }
        return Double.isFinite(least) ? least : 1;
    }
}

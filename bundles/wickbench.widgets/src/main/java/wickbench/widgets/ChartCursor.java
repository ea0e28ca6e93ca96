package wickbench.widgets;

import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;

/**
 * A point of a chart, as the arrow keys go from one to the next.
 *
 * @param series its place in the chart
 * @param point its place in the series
 */
record ChartCursor(int series, int point) {

    /** Goes along the series; stays where there is no further point that can be drawn. */
    ChartCursor along(Chart chart, int steps) {
        int size = of(chart).size();
        int direction = Integer.signum(steps);
        int at = Math.max(0, Math.min(size - 1, point + steps));
        while (at >= 0 && at < size && !drawable(chart, at)) {
            at += direction;
        }
        return at >= 0 && at < size ? new ChartCursor(series, at) : this;
    }

    /** Goes to the point of another series that is next in x. */
    ChartCursor across(Chart chart, int steps) {
        int next = Math.floorMod(series + steps, chart.series().size());
        Series other = chart.series().get(next);
        int at = Math.min(other.firstFrom(of(chart).x()[point]), other.size() - 1);
        return at < 0 ? this : new ChartCursor(next, at).near(chart);
    }

    /** Returns this point, or the next one that can be drawn. */
    ChartCursor near(Chart chart) {
        return drawable(chart, point) ? this : along(chart, 1);
    }

    Series of(Chart chart) {
        return chart.series().get(series);
    }

    double x(Chart chart) {
        return of(chart).x()[point];
    }

    double y(Chart chart) {
        return of(chart).y()[point];
    }

    private boolean drawable(Chart chart, int at) {
        double y = of(chart).y()[at];
        return Double.isFinite(y) && !(chart.y().scale() instanceof Axis.Logarithmic && y <= 0);
    }
}

package wickbench.api.chart;

import java.util.List;

/**
 * A chart as data: what to draw, not how.
 *
 * @param limits straight lines across, such as an action level
 */
public record Chart(String title, Axis x, Axis y, List<Series> series, List<Limit> limits) {
    public Chart {
        series = List.copyOf(series);
        limits = List.copyOf(limits);
    }

    /** An axis with its words and unit; {@code time} axes count milliseconds since 1970 UTC. */
    public record Axis(String name, String unit, boolean time) {}

    /** A line across the chart at one value of y. */
    public record Limit(String name, double y) {}

    /** How a series is drawn. */
    public enum Mark {
        LINE,
        STEPS,
        POINTS,
        BARS
    }

    /**
     * One series of points.
     *
     * @param x values in ascending order
     * @param y values, as many as x; NaN leaves a gap
     */
    public record Series(String name, Mark mark, double[] x, double[] y) {
        public Series {
            if (x.length != y.length) {
                throw new IllegalArgumentException("x has " + x.length + " values, y has " + y.length);
            }
        }
    }
}

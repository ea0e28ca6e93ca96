package wickbench.api.chart;

import java.util.List;

/**
 * A chart as data: what to draw, not how.
 *
 * @param limits straight lines across, such as an action level; each is drawn with its name
 */
public record Chart(String title, Axis x, Axis y, List<Series> series, List<Limit> limits) {
    public Chart {
        series = List.copyOf(series);
        limits = List.copyOf(limits);
    }

    /** A line across the chart at one value of y. */
    public record Limit(String name, double y) {}
}

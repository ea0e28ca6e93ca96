package wickbench.api.chart;

import java.util.List;

/**
 * A chart as data: what to draw, not how.
 *
 * @param limits straight lines across, such as an action level; each is drawn with its name
 * @param bands shaded ranges of y, behind everything
 */
public record Chart(String title, Axis x, Axis y, List<Series> series, List<Limit> limits, List<Band> bands) {
    public Chart {
        series = List.copyOf(series);
        limits = List.copyOf(limits);
        bands = List.copyOf(bands);
    }

    /** Makes a chart without shaded ranges. */
    public Chart(String title, Axis x, Axis y, List<Series> series, List<Limit> limits) {
        this(title, x, y, series, limits, List.of());
    }

    /** A range of y that is shaded; what it is, the names of its limits say. */
    public record Band(double low, double high) {}

    /** A line across the chart at one value of y. */
    public record Limit(String name, double y) {}
}

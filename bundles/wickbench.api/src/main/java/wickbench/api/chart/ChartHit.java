package wickbench.api.chart;

import java.util.Optional;

/**
 * The point of a chart that is nearest to the pointer; of bars the one that is nearest to the left or right.
 *
 * @param series its place in the chart's list
 * @param point its place in the series
 * @param distance in pixels
 */
public record ChartHit(int series, int point, double x, double y, double distance) {

    /**
     * Returns the nearest point within reach.
     *
     * <p>Only points within reach to the left and right are looked at, so a million points cost little.
     *
     * @param reach in pixels
     */
    public static Optional<ChartHit> nearest(Chart chart, ChartPlot plot, double pixelX, double pixelY, double reach) {
        Optional<ChartHit> best = Optional.empty();
        for (int i = 0; i < chart.series().size(); i++) {
            Optional<ChartHit> here = nearestOf(i, chart.series().get(i), plot, pixelX, pixelY, reach);
            if (here.isPresent() && best.stream().allMatch(hit -> here.get().distance() < hit.distance())) {
                best = here;
            }
        }
        return best;
    }

    private static Optional<ChartHit> nearestOf(
            int place, Series series, ChartPlot plot, double pixelX, double pixelY, double reach) {
        double until = plot.xAt(pixelX + reach);
        int best = -1;
        double least = reach;
        for (int i = series.firstFrom(plot.xAt(pixelX - reach)); i < series.size() && series.x()[i] <= until; i++) {
            double across = plot.pixelX(series.x()[i]) - pixelX;
            // a bar is pointed at wherever it stands
            double down = series.mark() == Series.Mark.BARS && !Double.isNaN(series.y()[i])
                    ? 0
                    : plot.pixelY(series.y()[i]) - pixelY;
            double distance = Math.hypot(across, down);
            if (distance <= least) {
                least = distance;
                best = i;
            }
        }
        return best < 0
                ? Optional.empty()
                : Optional.of(new ChartHit(place, best, series.x()[best], series.y()[best], least));
    }
}

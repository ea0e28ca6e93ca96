package wickbench.stock.ui;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.stock.Cause;
import wickbench.stock.Excursion;
import wickbench.stock.Fridge;
import wickbench.stock.FridgeTrace;
import wickbench.stock.FridgeTrace.Point;

/** The temperatures of a fridge: its range shaded, times without a reading left open, the worst of each excursion marked. */
final class FridgeChart {
    private FridgeChart() {}

    static Chart of(FridgeTrace trace, ZoneId zone) {
        Fridge fridge = trace.fridge();
        double low = fridge.low().doubleValue();
        double high = fridge.high().doubleValue();
        return new Chart(
                "",
                Axis.time("", zone),
                Axis.linear(StockUiWords.get("fridge.axis"), "\u00b0C"),
                Stream.of(
                                temperatures("fridge.highest", trace.points(), false),
                                temperatures("fridge.lowest", trace.points(), true),
                                peaks(trace.excursions()))
                        .filter(series -> series.size() > 0)
                        .toList(),
                List.of(
                        new Chart.Limit(StockUiWords.get("fridge.low-end"), low),
                        new Chart.Limit(StockUiWords.get("fridge.high-end"), high)),
                List.of(new Chart.Band(low, high)));
    }

    private static Series temperatures(String name, List<Point> points, boolean low) {
        List<double[]> drawn = new ArrayList<>();
        Optional<Instant> expected = Optional.empty();
        for (Point point : points) {
            if (expected.filter(point.from()::isAfter).isPresent()) {
                drawn.add(new double[] {expected.get().toEpochMilli(), Double.NaN});
            }
            drawn.add(new double[] {point.from().toEpochMilli(), low ? point.low() : point.high()});
            expected = Optional.of(point.from().plus(point.width()));
        }
        return series(name, Series.Mark.LINE, drawn);
    }

    /** Of a gap and of a stuck thermometer there is nothing to mark: nobody knows how it was. */
    private static Series peaks(List<Excursion> excursions) {
        List<double[]> drawn = excursions.stream()
                .filter(each -> each.cause() != Cause.GAP && each.cause() != Cause.STUCK)
                .map(each -> new double[] {
                    each.from().plus(each.length().dividedBy(2)).toEpochMilli(), each.peak()
                })
                .sorted((one, other) -> Double.compare(one[0], other[0]))
                .toList();
        return series("fridge.peaks", Series.Mark.POINTS, drawn);
    }

    private static Series series(String name, Series.Mark mark, List<double[]> drawn) {
        return new Series(
                StockUiWords.get(name),
                mark,
                drawn.stream().mapToDouble(each -> each[0]).toArray(),
                drawn.stream().mapToDouble(each -> each[1]).toArray());
    }
}

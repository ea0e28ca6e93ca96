package wickbench.stock.ui;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.stock.Outlook;

/** How the strips of a kit run down, with a step where a lot goes out of date. */
final class RunDown {
    private RunDown() {}

    static Chart of(Outlook outlook, ZoneId zone) {
        List<Chart.Limit> limits = new ArrayList<>();
        if (outlook.point() > 0) {
            limits.add(new Chart.Limit(StockUiWords.get("outlook.order-at"), Math.ceil(outlook.point())));
        }
        return new Chart(
                "",
                Axis.time("", zone),
                Axis.linear(StockUiWords.get("outlook.axis"), ""),
                List.of(new Series(
                        StockUiWords.get("outlook.strips"),
                        Series.Mark.LINE,
                        outlook.steps().stream()
                                .mapToDouble(step -> step.day()
                                        .atStartOfDay(zone)
                                        .toInstant()
                                        .toEpochMilli())
                                .toArray(),
                        outlook.steps().stream()
                                .mapToDouble(Outlook.Step::strips)
                                .toArray())),
                limits);
    }
}

package wickbench.training.face;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.training.Happening;
import wickbench.training.PersonRecord;
import wickbench.training.book.TrainingWords;

/** What happened to a person when, a row of marks for each kind. */
final class TimeLine {
    private final ZoneId zone;
    private final Print print;

    TimeLine(ZoneId zone) {
        this.zone = zone;
        this.print = new Print(zone);
    }

    Chart of(PersonRecord record) {
        List<String> kinds = record.happenings().stream()
                .map(each -> print.happeningRow(each).get(1))
                .distinct()
                .toList();
        List<Series> series = new ArrayList<>();
        for (int place = 0; place < kinds.size(); place++) {
            String kind = kinds.get(place);
            List<Happening> of = record.happenings().stream()
                    .filter(each -> print.happeningRow(each).get(1).equals(kind))
                    .toList();
            double[] y = new double[of.size()];
            java.util.Arrays.fill(y, place);
            series.add(new Series(
                    kind,
                    Series.Mark.POINTS,
                    of.stream().mapToDouble(each -> each.at().toEpochMilli()).toArray(),
                    y));
        }
        return new Chart(
                TrainingWords.get("chart.time-line"),
                Axis.time(TrainingWords.get("column.when"), zone),
                new Axis(TrainingWords.get("column.what"), "", new Axis.Named(kinds)),
                series,
                List.of());
    }
}

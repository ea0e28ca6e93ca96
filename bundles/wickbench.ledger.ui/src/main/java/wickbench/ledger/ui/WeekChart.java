package wickbench.ledger.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.ledger.Week;

/** The chart of the weeks: how many strips were positive, how many invalid. */
final class WeekChart {
    /** So that a first week does not fill the whole width. */
    private static final int LEAST = 8;

    private WeekChart() {}

    static Chart of(List<Week> weeks) {
        List<Week> all = new ArrayList<>(weeks);
        while (!all.isEmpty() && all.size() < LEAST) {
            LocalDate before = all.get(0).monday().minusWeeks(1);
            all.add(0, new Week(before, 0, 0, 0));
        }
        List<String> places = all.stream().map(week -> week.monday().toString()).toList();
        return new Chart(
                "",
                new Axis(LedgerUiWords.get("weeks.axis"), "", new Axis.Named(places)),
                Axis.linear(LedgerUiWords.get("weeks.strips"), ""),
                List.of(
                        series(LedgerUiWords.get("weeks.invalid"), all, Week::invalids),
                        series(LedgerUiWords.get("weeks.positive"), all, Week::positives)),
                List.of());
    }

    /** Says what the chart shows. */
    static String words(List<Week> weeks) {
        return LedgerUiWords.get(
                "weeks.words",
                weeks.size(),
                sum(weeks, Week::strips),
                sum(weeks, Week::positives),
                sum(weeks, Week::invalids));
    }

    private static long sum(List<Week> weeks, ToLongFunction<Week> count) {
        return weeks.stream().mapToLong(count).sum();
    }

    private static Series series(String name, List<Week> weeks, ToLongFunction<Week> count) {
        double[] x = new double[weeks.size()];
        double[] y = new double[weeks.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
            // where no strip was run, nothing was found; that is no zero
            y[i] = weeks.get(i).strips() == 0 ? Double.NaN : count.applyAsLong(weeks.get(i));
        }
        return new Series(name, Series.Mark.BARS, x, y);
    }
}

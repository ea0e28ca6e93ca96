package wickbench.widgets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.stream.Collectors;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.Series;
import wickbench.api.words.Decimals;

/** The points of a chart in words. */
record ChartWords(Chart chart) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final DateTimeFormatter SECOND = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
    /** As many digits as a person compares. */
    private static final MathContext DIGITS = new MathContext(6);

    /** Says a point; of bars, which stand side by side, all that stand at its place. */
    String say(ChartCursor cursor) {
        double x = cursor.x(chart);
        String values = cursor.of(chart).mark() == Series.Mark.BARS
                ? chart.series().stream()
                        .filter(series -> series.mark() == Series.Mark.BARS)
                        .map(series -> bar(series, x))
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining("\n"))
                : point(cursor.of(chart), cursor.y(chart));
        return WidgetWords.get("chart.at", chart.x().name(), value(chart.x(), x)) + "\n" + values;
    }

    private String bar(Series series, double x) {
        int at = series.firstFrom(x);
        return at < series.size() && series.x()[at] == x ? point(series, series.y()[at]) : "";
    }

    private String point(Series series, double y) {
        return WidgetWords.get("chart.value", series.name(), value(chart.y(), y));
    }

    private static String value(Axis axis, double value) {
        if (axis.scale() instanceof Axis.Time time) {
            return time(value, time.zone());
        }
        if (axis.scale() instanceof Axis.Named named
                && value >= 0
                && value < named.places().size()) {
            return named.places().get((int) value);
        }
        String number = Double.isFinite(value)
                ? Decimals.of(new BigDecimal(value).round(DIGITS).stripTrailingZeros())
                : WidgetWords.get("chart.gap");
        return axis.unit().isEmpty() ? number : number + " " + axis.unit();
    }

    private static String time(double millis, ZoneId zone) {
        LocalDateTime local = LocalDateTime.ofInstant(Instant.ofEpochMilli(Math.round(millis)), zone);
        if (local.toLocalTime().equals(LocalTime.MIDNIGHT)) {
            return DAY.format(local);
        }
        return (local.getSecond() == 0 ? MINUTE : SECOND).format(local);
    }
}

package wickbench.report.chart;

import java.awt.Graphics2D;
import java.text.DateFormat;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.text.SimpleDateFormat;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnitSource;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.TickUnits;
import org.jfree.chart.axis.ValueAxis;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Span;
import wickbench.report.text.ScreenFonts;
import wickbench.report.text.Visible;

/** Makes the axes of a drawing. Times are written as in ISO 8601 in every language, numbers with its decimal sign. */
record Axes(ScreenFonts fonts, ChartColors colors) {
    private static final double SIZE = 11;
    private static final int LONGEST_TITLE = 90;
    private static final int LONGEST_PLACE = 24;

    /** Names are left out only where they overlap; with this on both sides those that stay can be told apart. */
    private static final String ROOM = "  ";

    /** About as much of a chart's height as its field has, with a legend below. */
    private static final double FIELD = 0.6;

    /** Makes the one at the left, whose title is written upwards, smaller where it would be cut off. */
    ValueAxis upright(Axis axis, Span span, Graphics2D canvas, double height) {
        ValueAxis made = axis(axis, span);
        double needed = canvas.getFontMetrics(made.getLabelFont()).stringWidth(made.getLabel());
        made.setLabelFont(fonts.plain(Math.min(SIZE, SIZE * FIELD * height / Math.max(1, needed))));
        return made;
    }

    ValueAxis axis(Axis axis, Span span) {
        Visible visible = fonts.visible();
        ValueAxis made = make(axis, visible);
        made.setLabel(visible.atMost(axis.title(), LONGEST_TITLE));
        made.setLabelFont(fonts.plain(SIZE));
        made.setLabelPaint(colors.ink());
        made.setTickLabelFont(fonts.plain(SIZE - 1));
        made.setTickLabelPaint(colors.quiet());
        made.setTickMarkPaint(colors.quiet());
        made.setAxisLinePaint(colors.quiet());
        made.setRange(span.low(), span.high());
        return made;
    }

    private ValueAxis make(Axis axis, Visible visible) {
        if (axis.scale() instanceof Axis.Time time) {
            return timeAxis(TimeZone.getTimeZone(time.zone()));
        }
        if (axis.scale() instanceof Axis.Logarithmic) {
            return new LogTicks(numbers());
        }
        if (axis.scale() instanceof Axis.Named named) {
            SymbolAxis places = new SymbolAxis("", names(named, visible));
            places.setGridBandsVisible(false);
            return places;
        }
        NumberAxis plain = new NumberAxis();
        plain.setStandardTickUnits(new NumberTickUnitSource(false, numbers()));
        plain.setAutoRangeIncludesZero(false);
        return plain;
    }

    private static String[] names(Axis.Named named, Visible visible) {
        return named.places().stream()
                .map(place -> ROOM + visible.atMost(place, LONGEST_PLACE) + ROOM)
                .toArray(String[]::new);
    }

    private static NumberFormat numbers() {
        return new DecimalFormat("0.############", DecimalFormatSymbols.getInstance());
    }

    private static ValueAxis timeAxis(TimeZone zone) {
        DateAxis axis = new DateAxis("", zone, Locale.ROOT);
        TickUnits units = new TickUnits();
        add(units, zone, "HH:mm:ss", DateTickUnitType.SECOND, 1, 5, 15, 30);
        add(units, zone, "HH:mm", DateTickUnitType.MINUTE, 1, 5, 15, 30);
        add(units, zone, "MM-dd HH:mm", DateTickUnitType.HOUR, 1, 3, 6, 12);
        add(units, zone, "yyyy-MM-dd", DateTickUnitType.DAY, 1, 2, 7, 14);
        add(units, zone, "yyyy-MM", DateTickUnitType.MONTH, 1, 2, 3, 6);
        add(units, zone, "yyyy", DateTickUnitType.YEAR, 1, 2, 5, 10, 50);
        axis.setStandardTickUnits(units);
        return axis;
    }

    private static void add(TickUnits units, TimeZone zone, String pattern, DateTickUnitType type, int... steps) {
        DateFormat format = new SimpleDateFormat(pattern, Locale.ROOT);
        format.setTimeZone(zone);
        for (int step : steps) {
            units.add(new DateTickUnit(type, step, format));
        }
    }
}

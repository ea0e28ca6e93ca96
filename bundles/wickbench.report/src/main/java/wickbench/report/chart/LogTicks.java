package wickbench.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;

/** A logarithmic axis with ticks at 1, 2 and 5 of each power of ten; over many powers at 1 only. */
final class LogTicks extends LogAxis {
    private static final long serialVersionUID = 1L;
    private static final double FEW_POWERS = 3.5;

    private final NumberFormat format;

    LogTicks(NumberFormat format) {
        this.format = format;
        setSmallestValue(Double.MIN_NORMAL);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D canvas, AxisState state, Rectangle2D field, RectangleEdge edge) {
        TextAnchor anchor = RectangleEdge.isTopOrBottom(edge) ? TextAnchor.TOP_CENTER : TextAnchor.CENTER_RIGHT;
        return values(getRange()).stream()
                .map(value -> new NumberTick(value, format.format(value), anchor, TextAnchor.CENTER, 0))
                .toList();
    }

    static List<Double> values(Range range) {
        double low = Math.log10(range.getLowerBound());
        double high = Math.log10(range.getUpperBound());
        List<Integer> steps = high - low > FEW_POWERS ? List.of(1) : List.of(1, 2, 5);
        int skip = (int) Math.max(1, Math.ceil((high - low) / 10));
        List<Double> values = new ArrayList<>();
        for (int power = (int) Math.floor(low); power <= high; power += skip) {
            for (int step : steps) {
                values.add(Double.parseDouble(step + "e" + power));
            }
        }
        return values.stream().filter(range::contains).toList();
    }
}

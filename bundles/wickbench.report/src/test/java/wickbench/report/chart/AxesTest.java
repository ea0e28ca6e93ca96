package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.axis.ValueTick;
import org.jfree.chart.ui.RectangleEdge;
import org.junit.jupiter.api.Test;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Span;
import wickbench.report.text.ScreenFonts;

class AxesTest {
    private static final int PLACES = 136;
    private static final Rectangle2D AREA = new Rectangle2D.Double(60, 0, 580, 200);

    /** In pixels; a name's own words have less between them. */
    private static final double APART = 8;

    @Test
    void names_of_which_only_some_find_room_are_told_apart() {
        List<String> names = IntStream.range(0, PLACES)
                .mapToObj("2026-01-%03d 16:20"::formatted)
                .toList();
        ValueAxis axis = new Axes(ScreenFonts.load(), ChartColors.of(false))
                .axis(new Axis("Event", "", new Axis.Named(names)), new Span(-0.5, PLACES - 0.5));
        Graphics2D canvas = new BufferedImage(700, 300, BufferedImage.TYPE_INT_ARGB).createGraphics();
        List<String> shown = new ArrayList<>();
        double end = Double.NEGATIVE_INFINITY;
        for (Object each : axis.refreshTicks(canvas, new AxisState(), AREA, RectangleEdge.BOTTOM)) {
            ValueTick tick = (ValueTick) each;
            String name = tick.getText().strip();
            if (!name.isEmpty()) {
                double middle = axis.valueToJava2D(tick.getValue(), AREA, RectangleEdge.BOTTOM);
                double half = canvas.getFontMetrics(axis.getTickLabelFont()).stringWidth(name) / 2.0;
                assertThat(middle - half - end).as("%s after %s", name, shown).isGreaterThan(APART);
                end = middle + half;
                shown.add(name);
            }
        }
        assertThat(shown).hasSizeGreaterThan(2);
        assertThat(names).containsAll(shown);
    }
}

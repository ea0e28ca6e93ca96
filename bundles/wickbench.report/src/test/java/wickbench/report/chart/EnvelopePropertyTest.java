package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class EnvelopePropertyTest {
    private static final double PIXEL = 0.5;
    private static final int COLUMNS = 100;
    private static final double HALF = SeriesLook.solid().getLineWidth() / 2;

    @Property
    void reaches_as_far_up_and_down_as_the_line(
            @ForAll @Size(min = 2, max = 400) List<@IntRange(min = 0, max = 300) Integer> values) {
        Path2D line = new Path2D.Double();
        for (int i = 0; i < values.size(); i++) {
            double x = i * COLUMNS * PIXEL / values.size();
            if (i == 0) {
                line.moveTo(x, values.get(i));
            } else {
                line.lineTo(x, values.get(i));
            }
        }
        var area = area(line).getBounds2D();
        var least = values.stream().mapToInt(v -> v).summaryStatistics();
        assertThat(area.getMinY()).isCloseTo(least.getMin() - HALF, within(1e-9));
        assertThat(area.getMaxY()).isCloseTo(least.getMax() + HALF, within(1e-9));
    }

    private static Shape area(Path2D line) {
        return new Envelope(SeriesLook.solid(), PIXEL, COLUMNS).createStrokedShape(line);
    }
}

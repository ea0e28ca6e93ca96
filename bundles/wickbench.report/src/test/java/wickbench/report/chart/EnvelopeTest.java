package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.awt.geom.Path2D;
import org.junit.jupiter.api.Test;

class EnvelopeTest {
    private static final double PIXEL = 0.5;
    private static final int COLUMNS = 100;
    private static final double HALF = SeriesLook.solid().getLineWidth() / 2;

    @Test
    void covers_the_line_between_its_points() {
        Path2D line = new Path2D.Double();
        line.moveTo(1, 10);
        line.lineTo(11, 30);
        line.lineTo(11, 5);
        line.lineTo(21, 5);
        Shape area = area(line);
        assertThat(area.contains(6, 20)).isTrue();
        assertThat(area.contains(16, 5)).isTrue();
        assertThat(area.contains(11, 20)).isTrue();
        assertThat(area.contains(16, 20)).isFalse();
        assertThat(area.contains(6, 10)).isFalse();
    }

    @Test
    void a_spike_is_as_wide_at_its_tip_as_a_column() {
        Path2D line = new Path2D.Double();
        line.moveTo(0, 200);
        line.lineTo(10.1, 200);
        line.lineTo(10.2, 5);
        line.lineTo(10.3, 200);
        line.lineTo(30, 200);
        Shape area = area(line);
        assertThat(area.contains(10.01, 5, PIXEL - 0.02, 3)).isTrue();
        assertThat(area.contains(11.5, 100)).isFalse();
    }

    @Test
    void leaves_out_what_a_gap_leaves_out() {
        Path2D line = new Path2D.Double();
        line.moveTo(1, 10);
        line.lineTo(10, 10);
        line.moveTo(20, 10);
        line.lineTo(30, 10);
        Shape area = area(line);
        assertThat(area.contains(5, 10)).isTrue();
        assertThat(area.contains(15, 10)).isFalse();
        assertThat(area.contains(25, 10)).isTrue();
    }

    @Test
    void a_point_far_beyond_the_drawing_costs_nothing() {
        Path2D line = new Path2D.Double();
        line.moveTo(-1e12, 0);
        line.lineTo(1e12, 40);
        Shape area = area(line);
        assertThat(area.contains(25, 20)).isTrue();
        assertThat(area.getBounds2D().getWidth()).isLessThan(COLUMNS * PIXEL * 2);
    }

    private static Shape area(Path2D line) {
        return new Envelope(SeriesLook.solid(), PIXEL, COLUMNS).createStrokedShape(line);
    }
}

package wickbench.api.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ChartPlotTest {
    private static final Series STEADY =
            new Series("steady", Series.Mark.LINE, new double[] {0, 1, 2, 3}, new double[] {1, 10, Double.NaN, 100});
    private static final Chart CHART = new Chart(
            "chart",
            Axis.linear("x", ""),
            new Axis("y", "mg/kg", new Axis.Logarithmic()),
            List.of(STEADY),
            List.of(new Chart.Limit("limit", 1000)));
    private static final ChartPlot PLOT = new ChartPlot(
            50,
            20,
            400,
            300,
            ChartWindow.whole(CHART),
            CHART.x().scale(),
            CHART.y().scale());

    @Test
    void everything_is_in_the_whole_window() {
        assertThat(PLOT.window().x().holds(0)).isTrue();
        assertThat(PLOT.window().x().holds(3)).isTrue();
        assertThat(PLOT.window().y().holds(1)).isTrue();
        assertThat(PLOT.window().y().holds(1000)).isTrue();
    }

    @Property
    void a_pixel_comes_back_from_its_value(
            @ForAll @DoubleRange(min = 50, max = 450) double x, @ForAll @DoubleRange(min = 20, max = 320) double y) {
        assertThat(PLOT.pixelX(PLOT.xAt(x))).isCloseTo(x, within(1e-6));
        assertThat(PLOT.pixelY(PLOT.yAt(y))).isCloseTo(y, within(1e-6));
    }

    @Property
    void what_lies_under_the_pointer_stays_there_when_zooming(
            @ForAll @DoubleRange(min = 50, max = 450) double x,
            @ForAll @DoubleRange(min = 20, max = 320) double y,
            @ForAll @DoubleRange(min = 0.5, max = 8) double factor) {
        ChartPlot closer = PLOT.with(PLOT.zoomed(x, y, factor));
        assertThat(closer.xAt(x)).isCloseTo(PLOT.xAt(x), within(1e-6));
        assertThat(closer.yAt(y) / PLOT.yAt(y)).isCloseTo(1, within(1e-6));
    }

    @Property
    void dragging_there_and_back_changes_nothing(
            @ForAll @DoubleRange(min = -100, max = 100) double right,
            @ForAll @DoubleRange(min = -100, max = 100) double down) {
        ChartWindow back = PLOT.with(PLOT.moved(right, down)).moved(-right, -down);
        assertThat(back.x().low()).isCloseTo(PLOT.window().x().low(), within(1e-6));
        assertThat(back.y().high() / PLOT.window().y().high()).isCloseTo(1, within(1e-6));
    }

    @Test
    void no_zoom_goes_below_the_precision_of_numbers() {
        ChartPlot plot = PLOT;
        for (int i = 0; i < 200; i++) {
            plot = plot.with(plot.zoomed(100, 100, 4));
        }
        assertThat(plot.window().x().length()).isPositive();
    }

    @Test
    void the_nearest_point_is_found_and_gaps_are_none() {
        double x = PLOT.pixelX(1);
        double y = PLOT.pixelY(10);
        assertThat(ChartHit.nearest(CHART, PLOT, x + 3, y - 4, 10)).hasValueSatisfying(hit -> {
            assertThat(hit.point()).isEqualTo(1);
            assertThat(hit.distance()).isCloseTo(5, within(1e-6));
        });
        assertThat(ChartHit.nearest(CHART, PLOT, PLOT.pixelX(2), y, 10)).isEmpty();
    }
}

package wickbench.widgets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartPainter;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.ChartWindow;
import wickbench.api.chart.Series;
import wickbench.report.chart.ScreenPainter;

class ChartViewTest {
    private static final ChartPainter PAINTER = new ScreenPainter();
    private static final double START = Instant.parse("2026-03-01T09:00:00Z").toEpochMilli();
    private static final double HOUR = 3_600_000;
    private static final int NONE = SWT.NONE;

    private final Ui ui = new Ui();

    @AfterEach
    void closeWindow() {
        ui.close();
    }

    @Test
    void says_the_point_in_hand_as_the_arrows_go() {
        ChartView view = show(fridge());
        assertThat(view.says()).startsWith("Chart: Fridge K2. Left and right");
        ui.press(view, SWT.ARROW_RIGHT, (char) 0, NONE);
        assertThat(view.says()).isEqualTo("Chart: Fridge K2. Local time: 2026-03-01 10:00; Upper shelf: 4.5 °C");
        ui.press(view, SWT.ARROW_RIGHT, (char) 0, NONE);
        assertThat(view.says()).endsWith("11:00; Upper shelf: 5.25 °C");
        // the next value is missing
        ui.press(view, SWT.ARROW_RIGHT, (char) 0, NONE);
        assertThat(view.says()).endsWith("13:00; Upper shelf: 9 °C");
        ui.press(view, SWT.ARROW_DOWN, (char) 0, NONE);
        assertThat(view.says()).endsWith("13:00; Lower shelf: 3 °C");
        ui.press(view, SWT.END, (char) 0, NONE);
        ui.press(view, SWT.ARROW_RIGHT, (char) 0, NONE);
        assertThat(view.says()).endsWith("14:00; Lower shelf: 2 °C");
        ui.press(view, SWT.HOME, (char) 0, NONE);
        assertThat(view.says()).endsWith("10:00; Lower shelf: 3 °C");
    }

    @Test
    void says_the_point_under_the_pointer() {
        ChartView view = show(fridge());
        ChartPlot plot = plot(view);
        point(view, SWT.MouseMove, plot.pixelX(START + HOUR) + 3, plot.pixelY(5.25) - 3);
        assertThat(view.says()).endsWith("11:00; Upper shelf: 5.25 °C");
    }

    @Test
    void zooms_with_keys_wheel_and_frame_and_shows_everything_again() {
        ChartView view = show(fridge());
        ChartWindow whole = plot(view).window();
        ui.press(view, '+', '+', NONE);
        ui.await(view::settled);
        assertThat(plot(view).window().x().length()).isCloseTo(whole.x().length() / 1.5, within(1e-3));
        ui.press(view, SWT.ARROW_RIGHT, (char) 0, SWT.SHIFT);
        ui.await(view::settled);
        assertThat(plot(view).window().x().high())
                .isGreaterThan(whole.x().high() - whole.x().length() / 6 + 1);
        ui.press(view, '0', '0', NONE);
        ui.await(view::settled);
        assertThat(plot(view).window()).isEqualTo(whole);

        double x = plot(view).pixelX(START + 3 * HOUR);
        wheel(view, x, 3);
        ui.await(view::settled);
        // the pointer stands on a whole pixel
        assertThat(plot(view).pixelX(START + 3 * HOUR)).isCloseTo(x, within(0.5));
        assertThat(plot(view).window().x().length()).isCloseTo(whole.x().length() / 1.25, within(1e-3));
        wheel(view, x, -3);
        wheel(view, x, -3);
        ui.await(view::settled);
        assertThat(plot(view).window()).isEqualTo(whole);

        ChartPlot plot = plot(view);
        point(view, SWT.MouseDown, plot.left() + 40, plot.top() + 30);
        point(view, SWT.MouseMove, plot.left() + 140, plot.top() + 90);
        point(view, SWT.MouseUp, plot.left() + 140, plot.top() + 90);
        ui.await(view::settled);
        assertThat(plot(view).window().x().low())
                .isCloseTo(plot.xAt(plot.left() + 40), within(plot.window().x().length() / 500));
        assertThat(plot(view).window().y().high()).isCloseTo(plot.yAt(plot.top() + 30), within(0.1));
        point(view, SWT.MouseDoubleClick, plot.left() + 10, plot.top() + 10);
        ui.await(view::settled);
        assertThat(plot(view).window()).isEqualTo(whole);
    }

    @Test
    void the_window_follows_the_point_in_hand() {
        ChartView view = show(fridge());
        ui.press(view, SWT.HOME, (char) 0, NONE);
        for (int i = 0; i < 4; i++) {
            ui.press(view, '+', '+', NONE);
        }
        ui.await(view::settled);
        ui.press(view, SWT.END, (char) 0, NONE);
        ui.await(view::settled);
        assertThat(plot(view).window().x().holds(START + 4 * HOUR)).isTrue();
    }

    @Test
    void paints_the_picture_and_keeps_none_behind() {
        ChartView view = show(fridge());
        ui.await(() -> colours(view) > 4);
        view.chart(bars());
        view.chart(fridge());
        ui.await(view::settled);
        ui.press(view, '+', '+', NONE);
        view.dispose();
        ui.settle();
        assertThat(view.held()).isEmpty();
    }

    @Test
    void says_all_bars_of_a_place() {
        ChartView view = show(bars());
        ui.press(view, SWT.ARROW_RIGHT, (char) 0, NONE);
        assertThat(view.says()).isEqualTo("Chart: Strips. Place: Filler; Positive: 3; Invalid: 1");
        ChartPlot plot = plot(view);
        point(view, SWT.MouseMove, plot.pixelX(1), plot.top() + 5);
        assertThat(view.says()).contains("Place: Cutting table");
    }

    @Test
    void says_so_where_nobody_draws() {
        ChartView view = new ChartView(ui.shell(), ui, Optional.empty());
        view.chart(fridge());
        ui.open();
        assertThat(view.says()).contains("Charts cannot be drawn");
        assertThat(view.settled()).isTrue();
    }

    private ChartView show(Chart chart) {
        ChartView view = new ChartView(ui.shell(), ui, Optional.of(PAINTER));
        view.chart(chart);
        ui.open();
        ui.await(view::settled);
        return view;
    }

    private static ChartPlot plot(ChartView view) {
        return view.lens().plot().orElseThrow();
    }

    private void point(ChartView view, int type, double x, double y) {
        Event event = new Event();
        event.button = 1;
        event.x = (int) Math.round(x);
        event.y = (int) Math.round(y);
        view.notifyListeners(type, event);
        ui.settle();
    }

    private void wheel(ChartView view, double x, int count) {
        Event event = new Event();
        event.x = (int) Math.round(x);
        event.y = view.getSize().y / 2;
        event.count = count;
        view.notifyListeners(SWT.MouseVerticalWheel, event);
        ui.settle();
    }

    private long colours(ChartView view) {
        Image image = new Image(view.getDisplay(), view.getSize().x, view.getSize().y);
        GC gc = new GC(image);
        view.print(gc);
        gc.dispose();
        var data = image.getImageData();
        image.dispose();
        return IntStream.range(0, data.width * data.height)
                .mapToObj(i -> data.palette.getRGB(data.getPixel(i % data.width, i / data.width)))
                .map(RGB::hashCode)
                .distinct()
                .count();
    }

    private static Chart fridge() {
        double[] x = {START, START + HOUR, START + 2 * HOUR, START + 3 * HOUR, START + 4 * HOUR};
        return new Chart(
                "Fridge K2",
                Axis.time("Local time", ZoneId.of("Europe/Vienna")),
                Axis.linear("Temperature", "°C"),
                List.of(
                        new Series("Upper shelf", Series.Mark.LINE, x, new double[] {4.5, 5.25, Double.NaN, 9, 4}),
                        new Series("Lower shelf", Series.Mark.LINE, x, new double[] {3, 3, 3, 3, 2})),
                List.of(new Chart.Limit("highest allowed", 8)));
    }

    private static Chart bars() {
        double[] x = {0, 1};
        return new Chart(
                "Strips",
                new Axis("Place", "", new Axis.Named(List.of("Filler", "Cutting table"))),
                Axis.linear("Strips", ""),
                List.of(
                        new Series("Positive", Series.Mark.BARS, x, new double[] {3, 0}),
                        new Series("Invalid", Series.Mark.BARS, x, new double[] {1, 2})),
                List.of());
    }
}

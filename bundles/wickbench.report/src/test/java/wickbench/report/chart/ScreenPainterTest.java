package wickbench.report.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartLook;
import wickbench.api.chart.ChartPicture;
import wickbench.api.chart.ChartWindow;
import wickbench.api.chart.Series;
import wickbench.api.chart.Span;

class ScreenPainterTest {
    private static final ScreenPainter PAINTER = new ScreenPainter();
    private static final int BLUE = OkabeIto.BLUE.color().getRGB();

    @ParameterizedTest
    @CsvSource({"1,false", "1.5,false", "2,false", "1,true", "2,true"})
    void charts_are_painted_at_every_size_in_light_and_dark(double zoom, boolean dark) throws IOException {
        for (Chart chart : List.of(Charts.fridge(), Charts.detection(), Charts.bars(), Charts.stock())) {
            ChartPicture picture = PAINTER.paint(chart, look(zoom, dark));
            save(picture, chart.title().replace(' ', '-') + "-" + zoom + (dark ? "-dark" : "-light"));
            assertThat(picture.width()).isEqualTo((int) (640 * zoom));
            assertThat(picture.argb()[0])
                    .isEqualTo(ChartColors.of(dark).ground().getRGB());
            // the field does not shrink to nothing, and it grows with the picture
            assertThat(picture.plot().width() / zoom).isBetween(520.0, 640.0);
        }
    }

    @Test
    void a_single_spike_among_a_million_points_is_seen_where_it_belongs() {
        double[] x = new double[1_000_000];
        double[] y = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
        }
        y[654_321] = 100;
        Chart chart = new Chart(
                "",
                Axis.linear("x", ""),
                Axis.linear("y", ""),
                List.of(new Series("s", Series.Mark.LINE, x, y)),
                List.of());
        ChartPicture picture = PAINTER.paint(chart, look(1, false));
        double column = picture.plot().pixelX(654_321);
        double top = picture.plot().pixelY(100);
        assertThat(near(picture, BLUE, column, top + 3, 2)).isTrue();
        assertThat(near(picture, BLUE, column + 12, top + 3, 2)).isFalse();
    }

    @Test
    void a_point_is_drawn_where_the_plot_says() {
        Chart chart = new Chart(
                "title",
                Axis.linear("x", ""),
                Axis.linear("y", ""),
                List.of(new Series("s", Series.Mark.POINTS, new double[] {1, 2, 3}, new double[] {4, 9, 5})),
                List.of());
        for (double zoom : List.of(1.0, 1.5, 2.0)) {
            ChartPicture picture = PAINTER.paint(chart, look(zoom, false));
            double x = picture.plot().pixelX(2);
            double y = picture.plot().pixelY(9);
            assertThat(near(picture, BLUE, x, y, 0)).isTrue();
            assertThat(picture.plot().xAt(x)).isCloseTo(2, within(1e-9));
        }
    }

    @Test
    void a_gap_stays_empty() {
        Chart chart = new Chart(
                "",
                Axis.linear("x", ""),
                Axis.linear("y", ""),
                List.of(new Series(
                        "s", Series.Mark.LINE, new double[] {0, 1, 2, 3, 4}, new double[] {5, 5, Double.NaN, 5, 5})),
                List.of());
        ChartPicture picture = PAINTER.paint(chart, look(1, false));
        double y = picture.plot().pixelY(5);
        assertThat(near(picture, BLUE, picture.plot().pixelX(0.5), y, 1)).isTrue();
        assertThat(near(picture, BLUE, picture.plot().pixelX(1.5), y, 6)).isFalse();
        assertThat(near(picture, BLUE, picture.plot().pixelX(2.5), y, 6)).isFalse();
        assertThat(near(picture, BLUE, picture.plot().pixelX(3.5), y, 1)).isTrue();
    }

    @Test
    void a_window_shows_its_part_only() {
        ChartWindow window = new ChartWindow(new Span(1, 3), new Span(0, 10));
        Chart chart = new Chart(
                "",
                Axis.linear("x", ""),
                Axis.linear("y", ""),
                List.of(new Series("s", Series.Mark.LINE, new double[] {0, 4}, new double[] {5.3, 5.3})),
                List.of());
        ChartPicture picture = PAINTER.paint(chart, new ChartLook(640, 360, 1, false, Optional.of(window)));
        // the line runs through from edge to edge, and stays inside
        double y = picture.plot().pixelY(5.3);
        assertThat(near(picture, BLUE, picture.plot().left() + 2, y, 1)).isTrue();
        assertThat(near(picture, BLUE, picture.plot().left() + picture.plot().width() - 2, y, 1))
                .isTrue();
        assertThat(near(picture, BLUE, picture.plot().left() - 6, y, 2)).isFalse();
    }

    @Test
    void a_chart_without_points_is_painted() {
        Chart empty = new Chart("Nothing yet", Axis.linear("x", ""), Axis.linear("y", ""), List.of(), List.of());
        assertThat(PAINTER.paint(empty, look(1, false)).plot().width()).isPositive();
    }

    @Test
    void hostile_names_do_not_push_the_field_away() {
        String hostile = "=\u202E\u0000\n" + "x".repeat(10_000);
        Chart chart = new Chart(
                hostile,
                new Axis(hostile, hostile, new Axis.Linear()),
                Axis.linear(hostile, ""),
                List.of(
                        new Series(hostile, Series.Mark.LINE, new double[] {1, 2}, new double[] {1, 2}),
                        new Series(hostile, Series.Mark.POINTS, new double[] {1, 2}, new double[] {2, 1})),
                List.of(new Chart.Limit(hostile, 1.5)));
        ChartPicture picture = PAINTER.paint(chart, look(1, false));
        assertThat(picture.plot().width()).isGreaterThan(400);
        assertThat(picture.plot().height()).isGreaterThan(120);
    }

    private static ChartLook look(double zoom, boolean dark) {
        return new ChartLook((int) (640 * zoom), (int) (360 * zoom), zoom, dark, Optional.empty());
    }

    private static boolean near(ChartPicture picture, int color, double x, double y, int reach) {
        for (int row = (int) Math.round(y) - reach; row <= Math.round(y) + reach; row++) {
            for (int column = (int) Math.round(x) - reach; column <= Math.round(x) + reach; column++) {
                if (alike(picture.argb()[row * picture.width() + column], color)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A thin line that lies between two columns is painted paler in both. */
    private static boolean alike(int argb, int color) {
        int red = (argb >> 16 & 0xFF) - (color >> 16 & 0xFF);
        int blue = (argb & 0xFF) - (color & 0xFF);
        return Math.abs(red) < 140 && Math.abs(blue) < 90;
    }

    private static void save(ChartPicture picture, String name) throws IOException {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_ARGB);
        image.setRGB(0, 0, picture.width(), picture.height(), picture.argb(), 0, picture.width());
        Path folder = Files.createDirectories(Path.of("target", "pictures"));
        ImageIO.write(image, "png", folder.resolve(name + ".png").toFile());
    }
}

package wickbench.report.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.OptionalDouble;
import wickbench.api.chart.Chart;
import wickbench.report.chart.ChartDrawing;
import wickbench.report.chart.PreparedChart;
import wickbench.report.text.ScreenFonts;

/** Prints a chart as lines and words. */
record FigurePrint(Pages pages, ScreenFonts fonts) {
    static final double HEIGHT = 236;

    /** Points for a unit of the drawing, whose words are made for the screen. */
    private static final double SCALE = 0.75;
    /** As fine as printers print, in columns for a point. */
    private static final int COLUMNS = 4;

    void print(Chart chart) throws IOException {
        pages.need(HEIGHT + 8);
        PdfCanvas canvas = pages.pen().canvas(Pages.LEFT, pages.top(), SCALE);
        PreparedChart prepared = PreparedChart.of(chart);
        new ChartDrawing(fonts, false, OptionalDouble.empty())
                .draw(
                        canvas,
                        new Rectangle2D.Double(0, 0, Pages.WIDTH / SCALE, HEIGHT / SCALE),
                        chart,
                        prepared,
                        prepared.whole(),
                        (int) Pages.WIDTH * COLUMNS);
        canvas.dispose();
        pages.down(HEIGHT + 8);
    }
}

package wickbench.report.pdf;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartWindow;
import wickbench.report.chart.ChartDrawing;
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
        new ChartDrawing(fonts, false)
                .draw(
                        canvas,
                        new Rectangle2D.Double(0, 0, Pages.WIDTH / SCALE, HEIGHT / SCALE),
                        chart,
                        ChartWindow.whole(chart),
                        (int) Pages.WIDTH * COLUMNS);
        canvas.dispose();
        pages.down(HEIGHT + 8);
    }
}

package wickbench.report.chart;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Collections;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.WeakHashMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartLook;
import wickbench.api.chart.ChartPainter;
import wickbench.api.chart.ChartPicture;
import wickbench.api.chart.ChartPlot;
import wickbench.report.text.ScreenFonts;

/** Draws charts into pictures for the screen. */
@Component
public final class ScreenPainter implements ChartPainter {
    private final ScreenFonts fonts;
    /** For as long as somebody holds the chart, so that drawing another window of it is quick. */
    private final Map<Chart, PreparedChart> prepared = Collections.synchronizedMap(new WeakHashMap<>());

    @Activate
    public ScreenPainter() {
        fonts = ScreenFonts.load();
    }

    @Override
    public ChartPicture paint(Chart chart, ChartLook look) {
        BufferedImage image = new BufferedImage(look.width(), look.height(), BufferedImage.TYPE_INT_ARGB);
        Graphics2D canvas = image.createGraphics();
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        canvas.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        canvas.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        canvas.scale(look.zoom(), look.zoom());
        PreparedChart ready = prepared.computeIfAbsent(chart, PreparedChart::of);
        ChartPlot plot = new ChartDrawing(fonts, look.dark(), OptionalDouble.of(1 / look.zoom()))
                .draw(
                        canvas,
                        new Rectangle2D.Double(0, 0, look.width() / look.zoom(), look.height() / look.zoom()),
                        chart,
                        ready,
                        look.window().orElse(ready.whole()),
                        look.width());
        canvas.dispose();
        return new ChartPicture(look.width(), look.height(), pixels(image), scaled(plot, look.zoom()));
    }

    private static int[] pixels(BufferedImage image) {
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    private static ChartPlot scaled(ChartPlot plot, double zoom) {
        return new ChartPlot(
                plot.left() * zoom,
                plot.top() * zoom,
                plot.width() * zoom,
                plot.height() * zoom,
                plot.window(),
                plot.x(),
                plot.y());
    }
}

package wickbench.report.chart;

import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.data.xy.XYDataset;

/** Bars with the mark of their series over each, so that they are told apart without colour. */
final class MarkedBars extends XYBarRenderer {
    private static final long serialVersionUID = 1L;
    private static final double ABOVE = 6;

    private final transient SeriesLook look;

    MarkedBars(SeriesLook look) {
        this.look = look;
        setBarPainter(new StandardXYBarPainter());
        setShadowVisible(false);
        setDrawBarOutline(false);
        setLegendBar(look.shape());
    }

    @Override
    public void drawItem(
            Graphics2D canvas,
            XYItemRendererState state,
            Rectangle2D field,
            PlotRenderingInfo info,
            XYPlot plot,
            ValueAxis across,
            ValueAxis up,
            XYDataset data,
            int series,
            int item,
            CrosshairState crosshair,
            int pass) {
        super.drawItem(canvas, state, field, info, plot, across, up, data, series, item, crosshair, pass);
        double value = data.getYValue(series, item);
        if (Double.isNaN(value)) {
            return;
        }
        double x = across.valueToJava2D(data.getXValue(series, item), field, plot.getDomainAxisEdge());
        double y = up.valueToJava2D(value, field, plot.getRangeAxisEdge()) + (value < 0 ? ABOVE : -ABOVE);
        canvas.setPaint(look.color());
        canvas.fill(AffineTransform.getTranslateInstance(x, y).createTransformedShape(look.shape()));
    }
}

package wickbench.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.OptionalDouble;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.ChartWindow;
import wickbench.api.chart.Series;
import wickbench.report.text.ScreenFonts;

/**
 * Draws a chart onto anything that Java can draw on: a picture or a page.
 *
 * @param dark light words on a dark ground
 * @param pixel the width of a pixel in units of the drawing; empty on paper, where a line stays a line
 */
public record ChartDrawing(ScreenFonts fonts, boolean dark, OptionalDouble pixel) {
    /** How much of the ground a shaded range covers, of 255. */
    private static final int SHADE = 34;

    private static final double TITLE = 13;
    private static final double WORDS = 11;
    private static final int LONGEST_TITLE = 160;
    private static final int LONGEST_NAME = 48;
    private static final BasicStroke GRID = new BasicStroke(0.6f);
    private static final BasicStroke LIMIT =
            new BasicStroke(1.3f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {5, 3}, 0);

    /**
     * Draws a chart into an area and tells where its values lie in the units of the canvas.
     *
     * @param columns how many columns of pixels, or of points as fine as paper shows, the area has
     */
    public ChartPlot draw(
            Graphics2D canvas, Rectangle2D area, Chart chart, PreparedChart prepared, ChartWindow window, int columns) {
        ChartColors colors = ChartColors.of(dark);
        Axes axes = new Axes(fonts, colors);
        ValueAxis left = axes.upright(chart.y(), window.y(), canvas, area.getHeight());
        XYPlot plot = plot(chart, prepared, window, colors, columns);
        plot.setDomainAxis(axes.axis(chart.x(), window.x()));
        plot.setRangeAxis(left);
        JFreeChart drawn = chart(chart, plot, colors);
        ChartRenderingInfo info = new ChartRenderingInfo(null);
        drawn.draw(canvas, area, info);
        Rectangle2D field = info.getPlotInfo().getDataArea();
        return new ChartPlot(
                field.getX(),
                field.getY(),
                field.getWidth(),
                field.getHeight(),
                window,
                chart.x().scale(),
                chart.y().scale());
    }

    private JFreeChart chart(Chart chart, XYPlot plot, ChartColors colors) {
        JFreeChart drawn = new JFreeChart(null, null, plot, false);
        drawn.setBackgroundPaint(colors.ground());
        drawn.setPadding(new RectangleInsets(4, 4, 4, 26));
        if (!chart.title().isEmpty()) {
            TextTitle title = new TextTitle(fonts.visible().atMost(chart.title(), LONGEST_TITLE), fonts.bold(TITLE));
            title.setPaint(colors.ink());
            title.setPadding(2, 2, 6, 2);
            drawn.setTitle(title);
        }
        if (chart.series().size() > 1) {
            drawn.addLegend(legend(drawn, colors));
        }
        return drawn;
    }

    private LegendTitle legend(JFreeChart drawn, ChartColors colors) {
        LegendTitle legend = new LegendTitle(drawn.getPlot());
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setItemFont(fonts.plain(WORDS));
        legend.setItemPaint(colors.ink());
        legend.setBackgroundPaint(colors.ground());
        legend.setFrame(BlockBorder.NONE);
        return legend;
    }

    private XYPlot plot(Chart chart, PreparedChart prepared, ChartWindow window, ChartColors colors, int columns) {
        XYPlot plot = new XYPlot();
        plot.setBackgroundPaint(colors.ground());
        plot.setOutlinePaint(colors.quiet());
        plot.setDomainGridlinePaint(colors.grid());
        plot.setRangeGridlinePaint(colors.grid());
        plot.setDomainGridlineStroke(GRID);
        plot.setRangeGridlineStroke(GRID);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        List<Series> bars = chart.series().stream().filter(ChartDrawing::bars).toList();
        LimitNames names = new LimitNames(chart, window);
        for (int i = 0; i < chart.series().size(); i++) {
            Series series = chart.series().get(i);
            Thinned points = Thinned.of(prepared.series(i), chart.x().scale(), window.x(), columns);
            names.mind(points);
            String name = fonts.visible().atMost(series.name(), LONGEST_NAME);
            plot.setDataset(i, new PlotData(name, series.mark(), points, bars.indexOf(series), bars.size()));
            XYItemRenderer renderer = renderer(series.mark(), SeriesLook.of(i, colors));
            if (points.dense() && pixel.isPresent() && series.mark() != Series.Mark.BARS) {
                renderer.setSeriesStroke(0, new Envelope(SeriesLook.solid(), pixel.getAsDouble(), columns));
            }
            plot.setRenderer(i, renderer);
        }
        chart.bands().forEach(band -> plot.addRangeMarker(shade(band, colors), Layer.BACKGROUND));
        chart.limits().forEach(limit -> plot.addRangeMarker(limit(limit, names, colors), Layer.FOREGROUND));
        return plot;
    }

    private static boolean bars(Series series) {
        return series.mark() == Series.Mark.BARS;
    }

    private static XYItemRenderer renderer(Series.Mark mark, SeriesLook look) {
        XYItemRenderer renderer = mark == Series.Mark.BARS ? new MarkedBars(look) : lines(mark, look);
        renderer.setSeriesPaint(0, look.color());
        renderer.setSeriesStroke(0, look.stroke());
        return renderer;
    }

    private static XYItemRenderer lines(Series.Mark mark, SeriesLook look) {
        boolean line = mark != Series.Mark.POINTS;
        boolean points = mark == Series.Mark.POINTS || mark == Series.Mark.LINE_AND_POINTS;
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(line, points);
        // as one path, so that dashes run on from point to point
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setSeriesShape(0, look.shape());
        return renderer;
    }

    private ValueMarker limit(Chart.Limit limit, LimitNames names, ChartColors colors) {
        boolean right = names.onRight(limit);
        ValueMarker marker = new ValueMarker(limit.y(), colors.ink(), LIMIT);
        marker.setLabel(fonts.visible().atMost(limit.name(), LONGEST_NAME));
        marker.setLabelFont(fonts.bold(WORDS - 1));
        marker.setLabelPaint(colors.ink());
        marker.setLabelBackgroundColor(translucent(colors.ground()));
        if (names.below(limit)) {
            marker.setLabelAnchor(right ? RectangleAnchor.BOTTOM_RIGHT : RectangleAnchor.BOTTOM_LEFT);
            marker.setLabelTextAnchor(right ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        } else {
            marker.setLabelAnchor(right ? RectangleAnchor.TOP_RIGHT : RectangleAnchor.TOP_LEFT);
            marker.setLabelTextAnchor(right ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT);
        }
        marker.setLabelOffset(new RectangleInsets(2, 4, 2, 4));
        return marker;
    }

    private static IntervalMarker shade(Chart.Band band, ChartColors colors) {
        Color ink = colors.quiet();
        Color shade = new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), SHADE);
        IntervalMarker marker = new IntervalMarker(band.low(), band.high(), shade);
        marker.setAlpha(1);
        return marker;
    }

    private static Color translucent(Color ground) {
        return new Color(ground.getRed(), ground.getGreen(), ground.getBlue(), 200);
    }
}

package wickbench.benchmarks;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import wickbench.api.chart.Axis;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartLook;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.ChartWindow;
import wickbench.api.chart.Series;
import wickbench.api.chart.Span;
import wickbench.report.chart.ScreenPainter;

/** A chart of many points, drawn again as its window moves. */
final class Redraw implements Contest {
    private static final double SCREEN_MILLIS = 16;
    private static final int WIDTH = 1_200;
    private static final int HEIGHT = 600;
    private static final int TOGETHER = 25;
    private final int points;

    Redraw(int points) {
        this.points = points;
    }

    @Override
    public String figure() {
        return String.format(
                java.util.Locale.ROOT, "chart of %,d points redrawn, %,d × %d pixels", points, WIDTH, HEIGHT);
    }

    @Override
    public Unit unit() {
        return Unit.MILLIS;
    }

    @Override
    public int rounds() {
        return 5;
    }

    @Override
    public int warmUps() {
        return 4;
    }

    @Override
    public Field field(Path folder) {
        Chart chart = chart();
        Painter ours = new Painter(new ScreenPainter(), chart, ChartWindow.whole(chart));
        return new Field(
                ours,
                List.of(new Baseline(new Allowed(SCREEN_MILLIS), 1), new Baseline(new Naive(chart, ours.draw(0)), 1)));
    }

    private Chart chart() {
        Random chance = new Random(points);
        double[] x = new double[points];
        double[] y = new double[points];
        Arrays.setAll(x, i -> i);
        Arrays.setAll(y, i -> 5 + Math.sin(i * 1e-5) + chance.nextGaussian());
        Series series = new Series("found", Series.Mark.LINE, x, y);
        Axis across = Axis.linear("No.", "");
        return new Chart("Findings", across, Axis.linear("found", "mg/kg"), List.of(series), List.of());
    }

    /** Ours: the median of some windows, each a little further to the right. */
    private record Painter(ScreenPainter painter, Chart chart, ChartWindow whole) implements Contestant {
        @Override
        public String name() {
            return "the chart painter";
        }

        @Override
        public double lap() throws Exception {
            double[] millis = new double[TOGETHER];
            for (int i = 0; i < TOGETHER; i++) {
                int step = i;
                millis[i] = Timed.millis(() -> draw(step));
            }
            return Median.of(millis);
        }

        ChartPlot draw(int step) {
            double by = whole.x().length() * step / WIDTH;
            Span moved = new Span(whole.x().low() + by, whole.x().high() + by);
            Optional<ChartWindow> window = Optional.of(new ChartWindow(moved, whole.y()));
            return painter.paint(chart, new ChartLook(WIDTH, HEIGHT, 1, false, window))
                    .plot();
        }
    }

    /** What is allowed for one picture of a screen. */
    private record Allowed(double lap) implements Contestant {
        @Override
        public String name() {
            return "a screen's picture, as a fixed limit";
        }
    }

    /** A line from each point to the next, with the same smoothing, and nothing around it. */
    private record Naive(Chart chart, ChartPlot plot) implements Contestant {
        @Override
        public String name() {
            return "a line between all points";
        }

        @Override
        public double lap() throws Exception {
            BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB);
            Graphics2D canvas = image.createGraphics();
            canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            canvas.setColor(Color.BLACK);
            double millis = Timed.millis(() -> lines(canvas, chart.series().get(0)));
            canvas.dispose();
            return millis;
        }

        private void lines(Graphics2D canvas, Series series) {
            for (int i = 1; i < series.size(); i++) {
                canvas.draw(new Line2D.Double(
                        plot.pixelX(series.x()[i - 1]),
                        plot.pixelY(series.y()[i - 1]),
                        plot.pixelX(series.x()[i]),
                        plot.pixelY(series.y()[i])));
            }
        }
    }
}

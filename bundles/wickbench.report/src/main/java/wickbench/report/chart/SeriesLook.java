package wickbench.report.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** How the n-th series of a chart looks: colour, dash and shape change together, so that each alone tells it apart. */
record SeriesLook(Color color, Stroke stroke, Shape shape) {
    private static final float WIDTH = 1.6f;
    private static final double RADIUS = 3.2;
    private static final List<List<Float>> DASHES =
            List.of(List.of(), List.of(7f, 4f), List.of(2f, 3f), List.of(9f, 3f, 2f, 3f), List.of(14f, 5f));

    static SeriesLook of(int place, ChartColors colors) {
        return new SeriesLook(
                colors.series().get(place % colors.series().size()),
                stroke(DASHES.get(place % DASHES.size())),
                shape(place % 6));
    }

    /** Returns the stroke of a line without dashes. */
    static BasicStroke solid() {
        return new BasicStroke(WIDTH, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    static Stroke stroke(List<Float> dash) {
        if (dash.isEmpty()) {
            return solid();
        }
        float[] lengths = new float[dash.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = dash.get(i);
        }
        return new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, lengths, 0);
    }

    private static Shape shape(int which) {
        double side = 2 * RADIUS * 0.9;
        Rectangle2D square = new Rectangle2D.Double(-side / 2, -side / 2, side, side);
        return switch (which) {
            case 0 -> new Ellipse2D.Double(-RADIUS, -RADIUS, 2 * RADIUS, 2 * RADIUS);
            case 1 -> square;
            case 2 -> polygon(0, -1.2, 1.1, 0.8, -1.1, 0.8);
            case 3 -> AffineTransform.getRotateInstance(Math.PI / 4).createTransformedShape(square);
            case 4 -> polygon(0, 1.2, 1.1, -0.8, -1.1, -0.8);
            default ->
                polygon(
                        -1.1, -0.4, -0.4, -0.4, -0.4, -1.1, 0.4, -1.1, 0.4, -0.4, 1.1, -0.4, 1.1, 0.4, 0.4, 0.4, 0.4,
                        1.1, -0.4, 1.1, -0.4, 0.4, -1.1, 0.4);
        };
    }

    private static Shape polygon(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0] * RADIUS, corners[1] * RADIUS);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i] * RADIUS, corners[i + 1] * RADIUS);
        }
        path.closePath();
        return path;
    }
}

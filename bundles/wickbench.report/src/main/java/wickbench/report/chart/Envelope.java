package wickbench.report.chart;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.Arrays;

/**
 * Strokes a line that runs to the right and has several points in each column of pixels: as the area that it fills.
 *
 * <p>To the eye the same as stroking thousands of short lines over one another, and many times as fast. Dashes would not be
 * seen in it and are left out.
 *
 * @param plain gives the width
 * @param pixel the width of a column of pixels, in units of the drawing
 * @param columns how many the drawing has; what lies beyond is not seen
 */
record Envelope(BasicStroke plain, double pixel, int columns) implements Stroke {

    @Override
    public Shape createStrokedShape(Shape line) {
        Path2D area = new Path2D.Double(Path2D.WIND_NON_ZERO);
        Run run = new Run();
        double[] at = new double[6];
        for (PathIterator path = line.getPathIterator(null); !path.isDone(); path.next()) {
            if (path.currentSegment(at) == PathIterator.SEG_MOVETO) {
                run.addTo(area);
                run = new Run();
            }
            run.add(at[0], at[1]);
        }
        run.addTo(area);
        return area;
    }

    /** A line without a break: how far up and down it goes in each column. */
    private final class Run {
        /** One column more at either side, for what lies beyond. */
        private final double[] up = new double[columns + 2];

        private final double[] down = new double[columns + 2];
        private final int[] ends = {Integer.MAX_VALUE, -1};
        private double lastX = Double.NaN;
        private double lastY;

        Run() {
            Arrays.fill(up, Double.POSITIVE_INFINITY);
            Arrays.fill(down, Double.NEGATIVE_INFINITY);
        }

        void add(double x, double y) {
            int column = column(x);
            if (!Double.isNaN(lastX)) {
                for (int crossed = column(lastX) + 1; crossed <= column; crossed++) {
                    double part = ((crossed - 1) * pixel - lastX) / (x - lastX);
                    double crossing = lastY + Math.max(0, Math.min(1, part)) * (y - lastY);
                    reach(crossed - 1, crossing);
                    reach(crossed, crossing);
                }
            }
            reach(column, y);
            lastX = x;
            lastY = y;
        }

        private int column(double x) {
            return 1 + (int) Math.floor(Math.max(-1, Math.min(columns, x / pixel)));
        }

        private void reach(int column, double y) {
            up[column] = Math.min(up[column], y);
            down[column] = Math.max(down[column], y);
            ends[0] = Math.min(ends[0], column);
            ends[1] = Math.max(ends[1], column);
        }

        /** A single spike keeps the width of the line, or it would fade towards its tip. */
        private boolean sticksOut(double[] side, int column) {
            boolean left = column == ends[0] || side[column] < side[column - 1];
            boolean right = column == ends[1] || side[column] < side[column + 1];
            return left && right;
        }

        void addTo(Path2D area) {
            if (ends[1] < 0) {
                return;
            }
            double half = plain.getLineWidth() / 2;
            double[] top = new double[up.length];
            double[] bottom = new double[up.length];
            Arrays.setAll(top, column -> up[column] - half);
            // upside down, so that what sticks out is the least on either side
            Arrays.setAll(bottom, column -> -down[column] - half);
            area.moveTo((ends[0] - 1) * pixel, -bottom[ends[0]]);
            for (int column = ends[0]; column <= ends[1]; column++) {
                double wide = sticksOut(top, column) ? Math.min(half, pixel) : 0;
                area.lineTo((column - 0.5) * pixel - wide, top[column]);
                area.lineTo((column - 0.5) * pixel + wide, top[column]);
            }
            area.lineTo(ends[1] * pixel, top[ends[1]]);
            for (int column = ends[1]; column >= ends[0]; column--) {
                double wide = sticksOut(bottom, column) ? Math.min(half, pixel) : 0;
                area.lineTo((column - 0.5) * pixel + wide, -bottom[column]);
                area.lineTo((column - 0.5) * pixel - wide, -bottom[column]);
            }
            area.closePath();
        }
    }
}

package wickbench.report.chart;

import java.util.ArrayList;
import java.util.List;
import wickbench.api.chart.Chart;
import wickbench.api.chart.ChartPlot;
import wickbench.api.chart.ChartWindow;

/** Finds the side of a limit on which its name has room, and the end at which it hides fewer points. */
final class LimitNames {
    /** About as wide and high as a name is, as parts of the field. */
    private static final double WIDE = 0.3;

    private static final double HIGH = 0.08;

    private final ChartPlot unit;
    private final List<Thinned> all = new ArrayList<>();

    LimitNames(Chart chart, ChartWindow window) {
        unit = new ChartPlot(0, 0, 1, 1, window, chart.x().scale(), chart.y().scale());
    }

    void mind(Thinned points) {
        all.add(points);
    }

    /** Tells whether there is no room above it. */
    boolean below(Chart.Limit limit) {
        return unit.pixelY(limit.y()) < HIGH;
    }

    boolean onRight(Chart.Limit limit) {
        return hidden(limit, 1 - WIDE, 1) <= hidden(limit, 0, WIDE);
    }

    private long hidden(Chart.Limit limit, double from, double to) {
        double bottom = unit.pixelY(limit.y()) + (below(limit) ? HIGH : 0);
        long count = 0;
        for (Thinned points : all) {
            for (int i = 0; i < points.x().length; i++) {
                double x = unit.pixelX(points.x()[i]);
                double y = unit.pixelY(points.y()[i]);
                if (x >= from && x <= to && y >= bottom - HIGH && y <= bottom) {
                    count++;
                }
            }
        }
        return count;
    }
}

package wickbench.report.chart;

import java.awt.Color;
import java.util.List;

/**
 * The colours of a chart.
 *
 * @param ground behind everything
 * @param ink words and limits
 * @param quiet axes and their words
 * @param grid lines that help the eye; not needed to read the chart
 * @param series in the order in which they are given to series
 */
record ChartColors(Color ground, Color ink, Color quiet, Color grid, List<Color> series) {

    static ChartColors of(boolean dark) {
        return dark
                ? on(new Color(0x1F262E), new Color(0xE8EDF2), new Color(0xA9B5C1), new Color(0x3A4550))
                : on(Color.WHITE, new Color(0x1B2530), new Color(0x4E5C6A), new Color(0xDDE3E9));
    }

    private static ChartColors on(Color ground, Color ink, Color quiet, Color grid) {
        return new ChartColors(ground, ink, quiet, grid, OkabeIto.on(ground));
    }
}

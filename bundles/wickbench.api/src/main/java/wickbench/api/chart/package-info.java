/**
 * A chart, described once and drawn on screen and on paper.
 *
 * <p>What stands in it is a {@link wickbench.api.chart.Chart}. A {@link wickbench.api.chart.ChartPainter} draws it; what it
 * returns tells where each value lies, so that a window can answer the pointer ({@link wickbench.api.chart.ChartHit}) and zoom
 * ({@link wickbench.api.chart.ChartPlot}) without asking again.
 */
@Export
@Version("1.0.0")
package wickbench.api.chart;

import org.osgi.annotation.bundle.Export;
import org.osgi.annotation.versioning.Version;

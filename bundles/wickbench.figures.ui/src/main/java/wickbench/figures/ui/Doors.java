package wickbench.figures.ui;

import java.util.Optional;
import wickbench.api.chart.ChartPainter;
import wickbench.figures.sums.KeptSums;

/**
 * What the page asks of others.
 *
 * @param painter draws the plots; where there is none, the page says so
 */
record Doors(Optional<ChartPainter> painter, KeptSums kept) {}

package wickbench.api.chart;

/**
 * A drawn chart.
 *
 * @param argb a pixel each, row by row from above: alpha, red, green, blue
 * @param plot where its values lie
 */
public record ChartPicture(int width, int height, int[] argb, ChartPlot plot) {}

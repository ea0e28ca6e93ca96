/**
 * Prints reports and draws charts: the one report door and the one chart door of the house.
 *
 * <p>{@code text} holds the fonts and makes every character visible; {@code chart} draws charts for screen and paper; {@code
 * pdf} lays pages; {@code sheet} writes tables for spreadsheets and machines. Nothing here is exported: others meet it as
 * {@link wickbench.api.report.ReportPrinter} and {@link wickbench.api.chart.ChartPainter}.
 */
package wickbench.report;

/** The page Figures: sums with their inputs and units, formula, source, answer and plot; the same code as the commands. */
package wickbench.figures.ui;

/** The page Stockroom. */
package wickbench.stock.ui;

/** Logger files of any common shape, read row by row, and what their temperatures mean. Knows no fridge and no lot. */
package wickbench.stock.log;

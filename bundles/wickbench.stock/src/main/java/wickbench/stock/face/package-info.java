/** The stock room and its fridges on the command line. */
package wickbench.stock.face;

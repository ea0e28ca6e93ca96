/** Reads and writes what is told of the plant; for this bundle alone. */
package wickbench.plant.book;

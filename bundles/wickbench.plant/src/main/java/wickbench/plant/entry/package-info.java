/** How what this bundle writes is read back; for this bundle alone. */
package wickbench.plant.entry;

/** The command {@code plant}. */
package wickbench.plant.face;

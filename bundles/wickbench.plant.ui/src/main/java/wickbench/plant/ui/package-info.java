/** The page Plant. */
package wickbench.plant.ui;

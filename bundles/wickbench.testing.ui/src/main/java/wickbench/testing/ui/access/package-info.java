/** A walk through a window that asks whether everybody can use what stands in it. */
package wickbench.testing.ui.access;

/** The page Journal. */
package wickbench.journal.ui;

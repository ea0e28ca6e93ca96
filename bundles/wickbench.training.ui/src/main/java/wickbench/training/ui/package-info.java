/** The page Training. */
package wickbench.training.ui;

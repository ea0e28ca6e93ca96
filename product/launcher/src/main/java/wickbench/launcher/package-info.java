/**
 * Starts Wickbench.
 *
 * <p>The launcher reads a list of features, installs the bundles they name into a framework, starts them, looks for the one application
 * among their services, lends it the main thread, and ends the process with the number that it answers. It knows no window toolkit and
 * nothing of the trade.
 */
package wickbench.launcher;

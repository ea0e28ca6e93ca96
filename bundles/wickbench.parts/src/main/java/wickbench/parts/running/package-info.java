/**
 * The sets that run in this program, and how one is taken up or down without a restart.
 *
 * <p>All changes go one after another; one that fails leaves the sets as they were.
 */
package wickbench.parts.running;

/**
 * Measures the program against what a site could use instead.
 *
 * <p>Each figure is a contest: ours and its baselines are run in turn, round after round in the same program on the same disk,
 * and the medians are compared. A new figure is one class and one line in {@link wickbench.benchmarks.Contests}.
 */
package wickbench.benchmarks;

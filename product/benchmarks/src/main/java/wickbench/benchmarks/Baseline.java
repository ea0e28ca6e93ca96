package wickbench.benchmarks;

/**
 * What ours is held against.
 *
 * @param goal the ratio ours / baseline that is to be reached: at least, or where less is better, at most
 */
record Baseline(Contestant contestant, double goal) {}

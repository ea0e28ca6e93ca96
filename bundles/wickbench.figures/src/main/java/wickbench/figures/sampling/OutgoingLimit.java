package wickbench.figures.sampling;

/**
 * The average outgoing quality limit: the most that leaves, whatever comes in.
 *
 * @param share the worst share of faulty items that leaves on average
 * @param at the incoming share at which that happens
 */
public record OutgoingLimit(double share, double at) {}

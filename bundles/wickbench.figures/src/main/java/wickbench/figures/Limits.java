package wickbench.figures;

/**
 * An estimate between its confidence limits.
 *
 * @param estimate the point estimate, in the unit of what is estimated
 * @param lower the lower limit
 * @param upper the upper limit
 */
public record Limits(double estimate, double lower, double upper) {}

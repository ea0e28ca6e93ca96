package wickbench.figures.sampling;

import wickbench.figures.Inputs;

/**
 * What can be said after {@code n} random samples of which none was faulty.
 *
 * @param n the samples, at least 1
 */
public record NothingFound(int n) {
    public NothingFound {
        Inputs.whole("n", n, 1, Integer.MAX_VALUE);
    }

    /**
     * Returns 1 − (1 − C)^(1/n), the largest share of faulty items that still goes with nothing found.
     *
     * @param confidence one-sided, between 0 and 1, neither allowed
     */
    public double largestShare(double confidence) {
        return -Math.expm1(Math.log1p(-Inputs.level("confidence", confidence)) / n);
    }

    /** Returns 3/n, at most 1: the rule of three for 95 % (Hanley &amp; Lippman-Hand, JAMA 249:1743, 1983). */
    public double ruleOfThree() {
        return Math.min(1, 3.0 / n);
    }
}

package wickbench.figures.sampling;

import wickbench.figures.Inputs;

/**
 * A round of blind positive strips by which a reader qualifies.
 *
 * @param strips the blind positives, 1 to 1 million
 * @param misses how many may be missed, fewer than {@code strips}
 */
public record ReaderRound(int strips, int misses) {
    public ReaderRound {
        new Plan(strips, misses);
    }

    /** Returns P(pass) = Σ C(n,i) (1 − s)ⁱ sⁿ⁻ⁱ over i ≤ m, for a reader who sees a positive with the chance {@code skill}. */
    public double passes(double skill) {
        return new Plan(strips, misses).acceptance(1 - Inputs.probability("skill", skill));
    }
}

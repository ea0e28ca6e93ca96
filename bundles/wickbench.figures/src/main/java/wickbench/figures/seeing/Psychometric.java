package wickbench.figures.seeing;

/**
 * A fitted psychometric curve ψ(x) = γ + (1 − γ − λ)Φ((x − μ)/σ) (Wichmann and Hill, Percept. Psychophys. 63:1293, 2001).
 *
 * @param mean μ, where the reader sees half of what can be seen, in the unit of the level
 * @param spread σ, the same unit
 * @param guess γ, the chance to say yes to nothing
 * @param lapse λ, the chance to miss what is plain
 * @param minusLogLikelihood −ln L, binomial coefficients included
 */
public record Psychometric(double mean, double spread, double guess, double lapse, double minusLogLikelihood) {}

package wickbench.figures.sampling;

import wickbench.figures.Inputs;

/**
 * Contamination by particles that are spread through a product.
 *
 * @param perKg the mean number of particles in a kilogram, at least 0
 */
public record Particles(double perKg) {
    private static final double GRAMS = 1000;

    public Particles {
        Inputs.notNegative("per-kg", perKg);
    }

    /** Returns 1 − exp(−λm/1000): the chance that {@code grams} contain at least one particle, each lying where it likes (Poisson). */
    public double found(double grams) {
        return -Math.expm1(-expected(grams));
    }

    /**
     * Returns 1 − (1 + μ/k)^(−k) with μ = λm/1000: the chance when particles lie in clumps (negative binomial).
     *
     * @param clumping k, above 0; the smaller, the more they clump
     */
    public double foundClumped(double grams, double clumping) {
        Inputs.positive("clumping", clumping);
        return -Math.expm1(-clumping * Math.log1p(expected(grams) / clumping));
    }

    /** Returns λm/1000, the particles expected in {@code grams}. */
    public double expected(double grams) {
        return perKg * Inputs.notNegative("portion", grams) / GRAMS;
    }
}

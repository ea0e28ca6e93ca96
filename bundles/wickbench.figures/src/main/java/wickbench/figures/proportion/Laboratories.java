package wickbench.figures.proportion;

import java.util.Optional;
import wickbench.figures.Limits;

/**
 * The probability of detection between laboratories, at one level.
 *
 * @param lpod the pooled proportion with its limits: Student's t on the laboratories from 0.15 to 0.85, else the score interval of
 *     the pooled counts
 * @param byLaboratories whether the limits come from the laboratories
 * @param repeatability variance within laboratories, s_r² = Σ(x − x²/n)/(N−L)
 * @param betweenLaboratories variance between laboratories, s_L² = max(0, s²(POD) − s_r²/n)
 * @param reproducibility s_R² = s_r² + s_L²
 * @param podVariance variance of the laboratories' proportions, s²(POD)
 * @param homogeneity chi-squared test that all laboratories detect alike; absent when all tests agree, for then nothing varies
 */
public record Laboratories(
        Limits lpod,
        boolean byLaboratories,
        double repeatability,
        double betweenLaboratories,
        double reproducibility,
        double podVariance,
        Optional<Homogeneity> homogeneity) {

    /**
     * @param chiSquared Pearson's statistic
     * @param df degrees of freedom
     * @param p its p-value
     */
    public record Homogeneity(double chiSquared, long df, double p) {}
}

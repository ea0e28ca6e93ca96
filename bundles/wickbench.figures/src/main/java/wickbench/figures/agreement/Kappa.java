package wickbench.figures.agreement;

import wickbench.figures.Limits;

/**
 * Agreement of two readers beyond chance.
 *
 * <p>Two published pairs of standard errors, which differ: those of Cohen (Educ. Psychol. Meas. 20:37, 1960; weighted: Psychol. Bull.
 * 70:213, 1968) and those of Fleiss, Cohen and Everitt (Psychol. Bull. 72:323, 1969). The limits and z use the latter.
 *
 * @param observed the (weighted) share of agreement, po
 * @param expected the share expected by chance from the margins, pe
 * @param kappa (po − pe)/(1 − pe), at most 1, with limits κ ∓ z·SE
 * @param cohenSe √((Σw²p − po²)/n)/(1 − pe); unweighted √(po(1−po)/n)/(1−pe)
 * @param cohenSe0 the same where there is no agreement beyond chance
 * @param fleissSe standard error of 1969
 * @param fleissSe0 standard error of 1969 where there is no agreement beyond chance
 * @param z κ/fleissSe0
 * @param p two-sided p-value of z
 * @param scott Scott's π: pe from the mean margins (Public Opin. Q. 19:321, 1955); unweighted
 * @param ac1 Gwet's AC1: pe = Σπ(1−π)/(q−1) (Br. J. Math. Stat. Psychol. 61:29, 2008); unweighted
 */
public record Kappa(
        double observed,
        double expected,
        Limits kappa,
        double cohenSe,
        double cohenSe0,
        double fleissSe,
        double fleissSe0,
        double z,
        double p,
        double scott,
        double ac1) {}

package wickbench.figures.agreement;

import wickbench.figures.Inputs;
import wickbench.figures.NoAnswer;
import wickbench.figures.distribution.Binomial;
import wickbench.figures.distribution.ChiSquared;

/**
 * Whether two methods on the same samples differ, judged from the b + c samples on which they do (McNemar, Psychometrika 12:153,
 * 1947). Three published answers, each named; they differ when b + c is small.
 *
 * @param plain (b−c)²/(b+c), chi-squared with one degree of freedom
 * @param plainP its p-value
 * @param corrected (|b−c|−1)²/(b+c), 0 where b = c (Edwards, Psychometrika 13:185, 1948)
 * @param correctedP its p-value
 * @param exactP two-sided binomial probability, twice the smaller tail and at most 1
 */
public record McNemar(double plain, double plainP, double corrected, double correctedP, double exactP) {

    /**
     * @param b samples positive by the first only
     * @param c samples positive by the second only; b + c at least 1
     */
    public static McNemar of(long b, long c) {
        Inputs.count("B", b);
        Inputs.count("C", c);
        if (b + c == 0) {
            throw NoAnswer.of("", "mcnemar.none-differ");
        }
        double apart = Math.abs(b - c);
        double plain = apart * apart / (b + c);
        double less = Math.max(0, apart - 1);
        double corrected = less * less / (b + c);
        double exact = 2 * new Binomial(b + c, 0.5).atMost(Math.min(b, c));
        return new McNemar(
                plain, ChiSquared.above(plain, 1), corrected, ChiSquared.above(corrected, 1), Math.min(1, exact));
    }
}

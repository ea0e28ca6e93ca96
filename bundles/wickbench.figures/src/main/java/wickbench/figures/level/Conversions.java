package wickbench.figures.level;

import java.math.BigDecimal;
import wickbench.figures.NoAnswer;

/** From extract to sample, and between whole food and its protein. */
public final class Conversions {
    private Conversions() {}

    /**
     * Returns mg/kg of sample for mg/L of extract: extract × mL ÷ g × further dilution.
     *
     * @param mgPerL in the liquid on the strip
     * @param sampleG sample taken, in g
     * @param volumeMl liquid it was put into, in mL
     * @param further how many times that was thinned, 1 if not
     */
    public static BigDecimal inSample(BigDecimal mgPerL, BigDecimal sampleG, BigDecimal volumeMl, BigDecimal further) {
        Decimals.notNegative("extract", mgPerL);
        Decimals.positive("sample", sampleG);
        Decimals.positive("volume", volumeMl);
        if (further.compareTo(BigDecimal.ONE) < 0) {
            throw NoAnswer.of("dilution", "dilution.below-one", further.toPlainString());
        }
        return Decimals.over(mgPerL.multiply(volumeMl).multiply(further), sampleG);
    }

    /** Returns mg of whole food for mg of its protein. */
    public static BigDecimal foodOf(BigDecimal protein, BigDecimal proteinPercent) {
        Decimals.notNegative("protein", protein);
        return Decimals.over(protein.multiply(Decimals.HUNDRED), percent(proteinPercent));
    }

    /** Returns mg of protein for mg of whole food. */
    public static BigDecimal proteinOf(BigDecimal food, BigDecimal proteinPercent) {
        Decimals.notNegative("food", food);
        return Decimals.over(food.multiply(percent(proteinPercent)), Decimals.HUNDRED);
    }

    private static BigDecimal percent(BigDecimal percent) {
        if (percent.compareTo(Decimals.HUNDRED) > 0) {
            throw NoAnswer.of("protein-percent", "percent.above", percent.toPlainString());
        }
        return Decimals.positive("protein-percent", percent);
    }
}

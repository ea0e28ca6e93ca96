package wickbench.figures.level;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * The concentration at which the amount eaten at one time holds the reference dose (FAO/WHO ad hoc Expert Consultation on Risk
 * Assessment of Food Allergens, Part 2, 2022).
 *
 * @param mgPerKg mg of total protein of the source in a kilogram of food
 */
public record ActionLevel(BigDecimal mgPerKg) {
    public ActionLevel {
        Decimals.positive("level", mgPerKg);
    }

    /**
     * Returns dose ÷ amount.
     *
     * @param doseMg the reference dose in mg of protein, above 0
     * @param amountG what is eaten at one time, in g, above 0
     */
    public static ActionLevel of(BigDecimal doseMg, BigDecimal amountG) {
        Decimals.positive("dose", doseMg);
        Decimals.positive("amount", amountG);
        return new ActionLevel(Decimals.over(doseMg.multiply(Decimals.THOUSAND), amountG));
    }

    /** Returns the level with so many decimals, half up. */
    public BigDecimal rounded(int decimals) {
        return mgPerKg.setScale(decimals, RoundingMode.HALF_UP);
    }
}

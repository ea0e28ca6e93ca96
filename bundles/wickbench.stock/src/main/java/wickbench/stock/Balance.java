package wickbench.stock;

import java.math.BigDecimal;

/**
 * How much of a part is left of a lot.
 *
 * @param sealed in pouches and boxes that nobody has opened; of a liquid, all there is
 * @param open in opened pouches
 * @param missing how much more was used than was there by the count; then the rest is 0, and a count is owed
 */
public record Balance(Part part, BigDecimal sealed, BigDecimal open, BigDecimal missing) {

    public BigDecimal left() {
        return sealed.add(open);
    }
}

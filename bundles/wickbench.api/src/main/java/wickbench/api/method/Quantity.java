package wickbench.api.method;

import java.math.BigDecimal;

/** A decimal with its unit. */
public record Quantity(BigDecimal value, Unit unit) {

    public static Quantity of(String value, Unit unit) {
        return new Quantity(new BigDecimal(value), unit);
    }

    @Override
    public String toString() {
        return value.toPlainString() + " " + unit.symbol();
    }
}

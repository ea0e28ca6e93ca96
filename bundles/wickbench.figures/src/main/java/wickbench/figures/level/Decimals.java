package wickbench.figures.level;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import wickbench.figures.NoAnswer;

/** What all decimals of this package share. */
final class Decimals {
    /** More digits than any quantity here has; the last rounding is the caller's. */
    private static final MathContext DIGITS = new MathContext(30, RoundingMode.HALF_UP);

    static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private Decimals() {}

    static BigDecimal over(BigDecimal one, BigDecimal other) {
        return one.divide(other, DIGITS);
    }

    static BigDecimal positive(String field, BigDecimal value) {
        if (value.signum() <= 0) {
            throw NoAnswer.of(field, "positive.expected", value.toPlainString());
        }
        return value;
    }

    static BigDecimal notNegative(String field, BigDecimal value) {
        if (value.signum() < 0) {
            throw NoAnswer.of(field, "not-negative.expected", value.toPlainString());
        }
        return value;
    }

    /** Asks for a share above 0 and at most 1. */
    static BigDecimal share(String field, BigDecimal value) {
        if (value.signum() <= 0 || value.compareTo(BigDecimal.ONE) > 0) {
            throw NoAnswer.of(field, "share.expected", value.toPlainString());
        }
        return value;
    }
}

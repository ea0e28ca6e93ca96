package wickbench.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Decimals in one shape: no trailing zeros, no exponent. */
final class Decimals {
    private static final MathContext DIGITS = new MathContext(12, RoundingMode.HALF_UP);

    private Decimals() {}

    static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    static String text(BigDecimal value) {
        return plain(value).toPlainString();
    }

    /** Returns it as people read it, with the decimal sign of their language. */
    static String shown(BigDecimal value) {
        return wickbench.api.words.Decimals.of(plain(value));
    }

    /** Returns the quotient, rounded half up to 12 significant digits where it has more. */
    static BigDecimal divide(BigDecimal value, BigDecimal by) {
        return plain(value.divide(by, DIGITS));
    }
}

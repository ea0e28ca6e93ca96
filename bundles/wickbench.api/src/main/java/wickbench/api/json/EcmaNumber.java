package wickbench.api.json;

import java.math.BigDecimal;

/** Writes a decimal as ECMAScript writes a number (ECMA-262, Number::toString), which RFC 8785 prescribes. */
final class EcmaNumber {
    /** From this power of ten on, upwards, ECMAScript writes an exponent. */
    private static final int LARGEST_PLAIN = 21;

    /** Below this power of ten ECMAScript writes an exponent. */
    private static final int SMALLEST_PLAIN = -6;

    private EcmaNumber() {}

    /** Returns the text of {@code value}, whose digits must be the shortest that give the double back. */
    static String text(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal plain = value.stripTrailingZeros();
        String digits = plain.unscaledValue().abs().toString();
        // n of the standard: the value is 0.digits × 10^n
        int n = digits.length() - plain.scale();
        return (plain.signum() < 0 ? "-" : "") + layOut(digits, n);
    }

    private static String layOut(String digits, int n) {
        int k = digits.length();
        if (k <= n && n <= LARGEST_PLAIN) {
            return digits + "0".repeat(n - k);
        }
        if (0 < n && n <= LARGEST_PLAIN) {
            return digits.substring(0, n) + '.' + digits.substring(n);
        }
        if (SMALLEST_PLAIN < n && n <= 0) {
            return "0." + "0".repeat(-n) + digits;
        }
        String exponent = "e" + (n - 1 < 0 ? "-" : "+") + Math.abs(n - 1);
        return k == 1 ? digits + exponent : digits.charAt(0) + "." + digits.substring(1) + exponent;
    }
}

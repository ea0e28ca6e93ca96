package wickbench.figures.distribution;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;

/**
 * Binomial tails as plain sums in 40-digit decimals, sharing nothing with what they are held against.
 *
 * @param n trials
 * @param p the chance of each, exactly the double
 */
record ExactBinomial(int n, BigDecimal p) {
    static final MathContext DIGITS = new MathContext(40);
    private static final BigDecimal NEGLIGIBLE = new BigDecimal("1e-30");

    ExactBinomial(int n, double p) {
        this(n, new BigDecimal(p));
    }

    BigDecimal mass(int k) {
        BigInteger ways = BigInteger.ONE;
        int few = Math.min(k, n - k);
        for (int i = 1; i <= few; i++) {
            ways = ways.multiply(BigInteger.valueOf(n - few + i)).divide(BigInteger.valueOf(i));
        }
        return new BigDecimal(ways).multiply(p.pow(k, DIGITS), DIGITS).multiply(q().pow(n - k, DIGITS), DIGITS);
    }

    /** P(X ≥ k). */
    BigDecimal atLeast(int k) {
        return k > n * p.doubleValue() ? up(k) : BigDecimal.ONE.subtract(down(k - 1), DIGITS);
    }

    /** P(X ≤ k). */
    BigDecimal atMost(int k) {
        return k < n * p.doubleValue() ? down(k) : BigDecimal.ONE.subtract(up(k + 1), DIGITS);
    }

    private BigDecimal up(int k) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal term = k > n ? BigDecimal.ZERO : mass(k);
        BigDecimal odds = p.divide(q(), DIGITS);
        for (int i = k; i <= n && matters(term, sum); i++) {
            sum = sum.add(term, DIGITS);
            term = term.multiply(odds, DIGITS)
                    .multiply(BigDecimal.valueOf(n - i))
                    .divide(BigDecimal.valueOf(i + 1), DIGITS);
        }
        return sum;
    }

    private BigDecimal down(int k) {
        BigDecimal sum = BigDecimal.ZERO;
        BigDecimal term = k < 0 ? BigDecimal.ZERO : mass(k);
        BigDecimal odds = q().divide(p, DIGITS);
        for (int i = k; i >= 0 && matters(term, sum); i--) {
            sum = sum.add(term, DIGITS);
            term = term.multiply(odds, DIGITS)
                    .multiply(BigDecimal.valueOf(i))
                    .divide(BigDecimal.valueOf(n - i + 1), DIGITS);
        }
        return sum;
    }

    private static boolean matters(BigDecimal term, BigDecimal sum) {
        return term.compareTo(sum.multiply(NEGLIGIBLE, DIGITS)) > 0;
    }

    private BigDecimal q() {
        return BigDecimal.ONE.subtract(p);
    }

    /** How many digits of a double agree with the exact value. */
    static double digits(double computed, BigDecimal exact) {
        BigDecimal wrong =
                new BigDecimal(computed).subtract(exact).divide(exact, DIGITS).abs();
        return wrong.signum() == 0 ? 17 : -log10(wrong);
    }

    /** The natural logarithm, as a double. */
    static double ln(BigDecimal value) {
        int power = value.precision() - value.scale();
        return Math.log(value.scaleByPowerOfTen(-power).doubleValue()) + power * Math.log(10);
    }

    private static double log10(BigDecimal value) {
        int power = value.precision() - value.scale();
        return Math.log10(value.scaleByPowerOfTen(-power).doubleValue()) + power;
    }
}

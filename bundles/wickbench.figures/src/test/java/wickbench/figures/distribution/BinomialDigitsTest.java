package wickbench.figures.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickbench.testing.Meets;

/** Limits, tails and quantiles against plain sums in 40-digit decimals. */
class BinomialDigitsTest {
    private static final double DIGITS = 14;
    private static final int[] SIZES = {1, 2, 3, 5, 8, 12, 20, 29, 40, 60, 75, 100, 150, 200, 299, 500, 700, 1000, 3000
    };
    private static final double[] TAILS = {0.4, 0.25, 0.1, 0.05, 0.025, 0.005, 5e-4, 1e-6, 1e-10};

    record Case(int n, int x) {}

    /** Every count of small numbers of trials, some of large ones. */
    private static List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (int n : SIZES) {
            int step = Math.max(1, n / 40);
            for (int x = 0; x <= n; x += step) {
                cases.add(new Case(n, x));
            }
        }
        return cases;
    }

    @Test
    @Meets("ISO/IEC 17025 7.11.2 to 7.11.6")
    void limits_have_fourteen_digits() {
        double worst = 17;
        int checked = 0;
        for (Case each : cases()) {
            for (double tail : TAILS) {
                worst = Math.min(worst, lowerDigits(each, tail));
                worst = Math.min(worst, upperDigits(each, tail));
                checked += 2;
            }
        }
        assertThat(checked).isGreaterThan(10_000);
        assertThat(worst).isGreaterThanOrEqualTo(DIGITS);
    }

    /** P(X ≤ n − 1) = 1 − pⁿ: so near 1 that the tail cannot be met to its last digit. */
    @Test
    void a_limit_that_is_all_but_one_settles() {
        for (int n : SIZES) {
            for (double tail : new double[] {1e-8, 1e-10, 1e-12, 1e-14, 1e-15}) {
                double expected = Math.exp(Math.log1p(-tail) / n);
                assertThat(BinomialLimits.upper(n - 1, n, tail)).isEqualTo(expected, within(3e-16));
            }
        }
    }

    /** One exact Newton step from the computed limit says how far it is from the true one. */
    private static double lowerDigits(Case each, double tail) {
        double p = BinomialLimits.lower(each.x, each.n, tail);
        if (each.x == 0) {
            return p == 0 ? 17 : 0;
        }
        ExactBinomial exact = new ExactBinomial(each.n, p);
        BigDecimal wrong = exact.atLeast(each.x).subtract(new BigDecimal(tail));
        // d/dp P(X ≥ x) = x/p · P(X = x)
        return digits(wrong, exact.mass(each.x).multiply(BigDecimal.valueOf(each.x)));
    }

    private static double upperDigits(Case each, double tail) {
        double p = BinomialLimits.upper(each.x, each.n, tail);
        if (each.x == each.n) {
            return p == 1 ? 17 : 0;
        }
        ExactBinomial exact = new ExactBinomial(each.n, p);
        BigDecimal wrong = exact.atMost(each.x).subtract(new BigDecimal(tail));
        BigDecimal slope = exact.mass(each.x)
                .multiply(BigDecimal.valueOf(each.n - each.x))
                .multiply(exact.p())
                .divide(BigDecimal.ONE.subtract(exact.p()), ExactBinomial.DIGITS);
        return digits(wrong, slope);
    }

    private static double digits(BigDecimal wrong, BigDecimal perRelativeStep) {
        double relative =
                wrong.divide(perRelativeStep, ExactBinomial.DIGITS).abs().doubleValue();
        return relative == 0 ? 17 : Math.min(17, -Math.log10(relative));
    }

    @Test
    void tails_have_fourteen_digits_down_to_1e_300() {
        Random random = new Random(20260331);
        double worst = 17;
        double worstLog = 17;
        double smallest = 1;
        int checked = 0;
        while (checked < 5000) {
            int n = (int) Math.exp(random.nextDouble() * Math.log(3000)) + 1;
            int k = random.nextInt(n);
            double p = random.nextBoolean() ? random.nextDouble() : Math.exp(-12 * random.nextDouble());
            ExactBinomial exact = new ExactBinomial(n, p);
            Binomial binomial = new Binomial(n, p);
            BigDecimal below = exact.atMost(k);
            BigDecimal above = exact.atLeast(k + 1);
            if (ExactBinomial.ln(below) < -690 || ExactBinomial.ln(above) < -690) {
                continue;
            }
            checked++;
            smallest = Math.min(smallest, Math.min(below.doubleValue(), above.doubleValue()));
            worst = Math.min(worst, ExactBinomial.digits(binomial.atMost(k), below));
            worst = Math.min(worst, ExactBinomial.digits(binomial.above(k), above));
            worstLog = Math.min(worstLog, logDigits(binomial.logAtMost(k), below));
            worstLog = Math.min(worstLog, logDigits(binomial.logAbove(k), above));
        }
        assertThat(smallest).isLessThan(1e-250);
        assertThat(worst).isGreaterThanOrEqualTo(DIGITS);
        assertThat(worstLog).isGreaterThanOrEqualTo(DIGITS);
    }

    private static double logDigits(double computed, BigDecimal exact) {
        double expected = ExactBinomial.ln(exact);
        double wrong = Math.abs(computed - expected) / Math.max(Math.abs(expected), 1);
        return wrong == 0 ? 17 : -Math.log10(wrong);
    }
}

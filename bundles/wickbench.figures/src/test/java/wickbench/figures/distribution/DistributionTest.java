package wickbench.figures.distribution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class DistributionTest {

    /** Twenty digits computed in 50-digit arithmetic (mpmath). */
    @ParameterizedTest
    @CsvFileSource(resources = "/wickbench/figures/exact_digits.csv", numLinesToSkip = 1)
    void agrees_with_fifty_digit_arithmetic_to_fourteen_digits(String quantity, String which, String reference) {
        double computed = switch (quantity) {
            case "clopper_pearson_upper95" -> BinomialLimits.upper(number(which, 0), number(which, 1), 0.05);
            case "binom_upper_tail" -> upperTail(which);
            case "normal_quantile" -> Normal.quantile(Double.parseDouble(which));
            default -> throw new AssertionError(quantity);
        };
        assertThat(ExactBinomial.digits(computed, new BigDecimal(reference))).isGreaterThanOrEqualTo(14);
    }

    private static long number(String fraction, int part) {
        return Long.parseLong(fraction.split("/")[part]);
    }

    /** "n=1000 p=0.001 k=5": more than k, as the reference has it. */
    private static double upperTail(String which) {
        String[] parts = which.replaceAll("[a-z]=", "").split(" ");
        Binomial binomial = new Binomial(Long.parseLong(parts[0]), Double.parseDouble(parts[1]));
        return binomial.above(Long.parseLong(parts[2]));
    }

    /** Computed with mpmath to 50 digits. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.30853753872598689636",
        "1, 0.15865525393145705142",
        "5, 2.8665157187919391167e-7",
        "10, 7.6198530241605260660e-24",
        "37, 5.7255712225245768e-300",
        "-3, 0.99865010196836990547"
    })
    void normal_tails_keep_their_digits(double z, BigDecimal exact) {
        assertThat(ExactBinomial.digits(Normal.above(z), exact)).isGreaterThanOrEqualTo(14);
        assertThat(Normal.logAbove(z)).isEqualTo(Math.log(exact.doubleValue()), within(1e-12));
    }

    @Test
    void normal_quantiles_invert_the_tails() {
        for (double p = 0.001; p < 1; p += 0.001) {
            assertThat(Normal.below(Normal.quantile(p))).isEqualTo(p, within(3e-16));
        }
        assertThat(Normal.twoSided(0.95)).isEqualTo(1.959963984540054, within(1e-15));
    }

    /** t(0.975, 9) = 2.262157: R 4.2.2; the others from mpmath. */
    @ParameterizedTest
    @CsvSource({"1, 12.706204736174694", "9, 2.2621571627982055", "30, 2.0422724563012383", "200, 1.9718962236339094"})
    void student_quantiles_agree(long df, double expected) {
        StudentT student = new StudentT(df);
        assertThat(student.upperQuantile(0.025)).isEqualTo(expected, within(expected * 1e-14));
        assertThat(student.above(expected)).isEqualTo(0.025, within(1e-15));
    }

    /** Textbook critical values: chi-squared 0.95 quantiles 3.841459 and 16.918978 (R 4.2.2). */
    @ParameterizedTest
    @CsvSource({"3.841458820694124, 1", "16.918977604620448, 9", "43.77297182574219, 30"})
    void chi_squared_tails_agree(double x, long df) {
        assertThat(ChiSquared.above(x, df)).isEqualTo(0.05, within(1e-15));
    }

    /** Smallest R with P(X ≤ R) at least the service: R 4.2.2 qpois. */
    @ParameterizedTest
    @CsvSource({"1, 0.9, 2", "1, 0.99, 4", "3, 0.98, 7", "7.5, 0.98, 14", "10, 0.95, 15", "10, 0.99, 18"})
    void poisson_quantiles_agree(double mean, double service, long expected) {
        assertThat(new Poisson(mean).quantile(service)).isEqualTo(expected);
        assertThat(new Poisson(mean).atMost(expected) + new Poisson(mean).above(expected))
                .isEqualTo(1, within(1e-15));
    }

    @Test
    void the_ends_of_a_binomial_are_certain() {
        Binomial sure = new Binomial(5, 1);
        assertThat(sure.atMost(4)).isZero();
        assertThat(sure.mass(5)).isEqualTo(1);
        assertThat(new Binomial(5, 0).above(0)).isZero();
        assertThat(new Binomial(40, 0.5).quantile(0.025)).isEqualTo(14);
        // P(14 ≤ X ≤ 26), R 4.2.2
        Binomial fair = new Binomial(40, 0.5);
        assertThat(fair.atMost(26) - fair.atMost(13)).isEqualTo(0.96152, within(5e-6));
    }

    @Test
    void what_is_no_probability_is_refused() {
        assertThatThrownBy(() -> Normal.quantile(Double.NaN)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Binomial(0, 0.5)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Poisson(Double.POSITIVE_INFINITY)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new StudentT(3).upperQuantile(0.5)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> BinomialLimits.lower(3, 2, 0.1))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.text()).isEqualTo("3 is more than N, which is 2"));
    }
}

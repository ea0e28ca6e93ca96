package wickbench.figures.proportion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;

class DifferencesTest {
    /** The computed values were rounded from a z of 1.96. */
    private static final double FOUR_PLACES = 6e-5;

    /**
     * Formula read in AOAC Official Methods, Appendix J; values computed in R 4.2.2. The last is printed as 0.019 to 0.34 in
     * Fagerland, Lydersen and Laake, Stat. Methods Med. Res. 24:224 (2015).
     */
    @ParameterizedTest
    @CsvSource({
        "12, 20, 8, 20, .2000, -.1018, .4563",
        "20, 20, 17, 20, .1500, -.0384, .3604",
        "5, 5, 0, 5, 1, .3855, 1",
        "7, 34, 1, 34, .1765, .0189, .3404"
    })
    void of_separate_samples(long x1, long n1, long x2, long n2, double difference, double lower, double upper) {
        Limits limits = Differences.unpaired(x1, n1, x2, n2, 0.95);
        assertThat(limits.estimate()).isEqualTo(difference, within(FOUR_PLACES));
        assertThat(limits.lower()).isEqualTo(lower, within(FOUR_PLACES));
        assertThat(limits.upper()).isEqualTo(upper, within(FOUR_PLACES));
    }

    @Test
    void swapping_paired_methods_mirrors_the_limits() {
        Limits one = Differences.paired(20, 8, 2, 10, 0.95);
        Limits other = Differences.paired(20, 2, 8, 10, 0.95);
        assertThat(one.estimate()).isEqualTo(0.15, within(1e-15));
        assertThat(one.lower()).isEqualTo(-other.upper(), within(1e-15));
        assertThat(one.upper()).isEqualTo(-other.lower(), within(1e-15));
    }

    @Test
    void pairs_that_agree_narrow_the_limits() {
        Limits paired = Differences.paired(40, 4, 2, 40, 0.95);
        Limits unpaired = Differences.unpaired(44, 86, 42, 86, 0.95);
        assertThat(paired.upper() - paired.lower()).isLessThan((unpaired.upper() - unpaired.lower()) / 2);
    }

    @Test
    void impossible_counts_are_refused() {
        assertThatThrownBy(() -> Differences.paired(0, 0, 0, 0, 0.95)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Differences.paired(1, -1, 0, 0, 0.95)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Differences.unpaired(1, 2, 4, 3, 0.95)).isInstanceOf(NoAnswer.class);
    }
}

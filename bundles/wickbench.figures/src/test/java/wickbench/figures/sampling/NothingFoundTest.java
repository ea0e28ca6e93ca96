package wickbench.figures.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class NothingFoundTest {

    /** Hanley and Lippman-Hand, JAMA 249:1743 (1983); values computed with R 4.2.2, their example of 14 from memory. */
    @ParameterizedTest
    @CsvSource({
        "10, .2589, .3000, .00005",
        "14, .1926, .2143, .00005",
        "20, .1391, .1500, .00005",
        "30, .0950, .1000, .00005",
        "60, .0487, .0500, .00005",
        "100, .02951, .03000, .000005",
        "300, .009936, .010000, .0000005"
    })
    void rule_of_three(int n, double exact, double rule, double printed) {
        assertThat(new NothingFound(n).largestShare(.95)).isEqualTo(exact, within(printed));
        assertThat(new NothingFound(n).ruleOfThree()).isEqualTo(rule, within(printed));
    }

    /** The upper end of the two-sided 95 % limits, computed with R 4.2.2. */
    @Test
    void two_sided() {
        assertThat(new NothingFound(20).largestShare(.975)).isEqualTo(.16843, within(0.000005));
    }

    @Test
    void a_rule_never_says_more_than_all() {
        assertThat(new NothingFound(1).ruleOfThree()).isEqualTo(1);
    }

    @Test
    void refuses_no_samples_and_certainty() {
        assertThatThrownBy(() -> new NothingFound(0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new NothingFound(5).largestShare(1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new NothingFound(5).largestShare(Double.NaN)).isInstanceOf(NoAnswer.class);
    }
}

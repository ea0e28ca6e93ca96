package wickbench.figures.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class McNemarTest {

    /** The test values of statsmodels for its McNemar test, made with R (read); the last is Agresti's approval table (from memory), in R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "121, 59, 21.35556, 3.815136e-06, 20.67222, 5.450095e-06",
        "70, 59, 0.9379845, 0.3327967, 0.7751938, 0.3786151",
        "80, 59, 3.172662, 0.07488031, 2.877698, 0.08981434"
    })
    void three_ways(long b, long c, double plain, double plainP, double corrected, double correctedP) {
        McNemar test = McNemar.of(b, c);
        assertThat(test.plain()).isEqualTo(plain, within(plain * 5e-7));
        assertThat(test.plainP()).isEqualTo(plainP, within(plainP * 5e-7));
        assertThat(test.corrected()).isEqualTo(corrected, within(corrected * 5e-7));
        assertThat(test.correctedP()).isEqualTo(correctedP, within(correctedP * 5e-7));
    }

    /** As above. */
    @ParameterizedTest
    @CsvSource({
        "121, 59, 0.000004",
        "70, 59, 0.378688",
        "80, 59, 0.089452",
        "30, 60, 0.00206",
        "10, 30, 0.002221",
        "10, 10, 1"
    })
    void exactly(long b, long c, double p) {
        assertThat(McNemar.of(b, c).exactP()).isEqualTo(p, within(5.1e-7));
    }

    @Test
    void agresti_approval_table() {
        McNemar test = McNemar.of(150, 86);
        assertThat(test.plain()).isEqualTo(17.3559, within(5e-5));
        assertThat(test.plainP()).isEqualTo(3.0993e-05, within(5e-10));
        assertThat(test.corrected()).isEqualTo(16.8178, within(5e-5));
        assertThat(test.exactP()).isEqualTo(3.7159e-05, within(5e-10));
    }

    @Test
    void without_a_sample_that_differs_there_is_no_test() {
        assertThatThrownBy(() -> McNemar.of(0, 0)).isInstanceOf(NoAnswer.class);
        assertThat(McNemar.of(1, 1).corrected()).isZero();
    }
}

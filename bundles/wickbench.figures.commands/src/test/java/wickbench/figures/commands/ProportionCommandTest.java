package wickbench.figures.commands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ProportionCommandTest {

    /** Score limits of 81/263: Newcombe, Stat. Med. 17:857 (1998), Table I, read and recomputed. */
    @Test
    void answers_estimate_and_limits() {
        Call call = Call.of("proportion", "81", "263");
        assertThat(call.code()).isZero();
        assertThat(call.number("estimate")).isEqualTo(81 / 263d, within(1e-14));
        assertThat(call.number("lower")).isEqualTo(0.2553, within(0.00005));
        assertThat(call.number("upper")).isEqualTo(0.3662, within(0.00005));
    }

    @Test
    void more_positives_than_tests_is_one_line() {
        Call call = Call.of("proportion", "5", "4");
        assertThat(call.code()).isEqualTo(2);
        assertThat(call.complaint()).isEqualTo("X: 5 is more than N, which is 4");
    }
}

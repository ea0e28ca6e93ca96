package wickbench.figures.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class ReaderRoundTest {

    /** Binomial law, computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "10, 0, .9044, .5987, .3487, .1074, .0282, .0010",
        "20, 0, .8179, .3585, .1216, .0115, .0008, .0000",
        "20, 1, .9831, .7358, .3917, .0692, .0076, .0000",
        "30, 1, .9639, .5535, .1837, .0105, .0003, .0000",
        "59, 0, .5527, .0485, .0020, .0000, .0000, .0000"
    })
    void chance_to_pass(
            int strips, int misses, double at99, double at95, double at90, double at80, double at70, double at50) {
        ReaderRound round = new ReaderRound(strips, misses);
        assertThat(round.passes(.99)).isEqualTo(at99, within(0.00005));
        assertThat(round.passes(.95)).isEqualTo(at95, within(0.00005));
        assertThat(round.passes(.90)).isEqualTo(at90, within(0.00005));
        assertThat(round.passes(.80)).isEqualTo(at80, within(0.00005));
        assertThat(round.passes(.70)).isEqualTo(at70, within(0.00005));
        assertThat(round.passes(.50)).isEqualTo(at50, within(0.00005));
    }

    @Test
    void refuses_what_is_no_round() {
        assertThatThrownBy(() -> new ReaderRound(0, 0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new ReaderRound(10, 10)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new ReaderRound(10, 0).passes(1.1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new ReaderRound(10, 0).passes(Double.NaN)).isInstanceOf(NoAnswer.class);
    }
}

package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class RunsTest {

    /** Anhøj and Olesen, PLoS ONE 9:e113825 (2014), n = 24: from memory and recomputed. */
    @Test
    void limits_of_24_points() {
        assertThat(Runs.longestAllowed(24)).isEqualTo(8);
        assertThat(Runs.fewestAllowed(24)).isEqualTo(8);
    }

    /** The 5 % quantile of the binomial law with 9 and 19 trials and chance ½: 2 and 6, from tables of the binomial law. */
    @Test
    void limits_of_10_and_20_points() {
        assertThat(Runs.fewestAllowed(10)).isEqualTo(2);
        assertThat(Runs.fewestAllowed(20)).isEqualTo(6);
        assertThat(Runs.longestAllowed(10)).isEqualTo(6);
        assertThat(Runs.longestAllowed(20)).isEqualTo(7);
    }

    /** By hand. */
    @Test
    void counts_runs_and_crossings_without_points_on_the_centre() {
        Runs runs = Runs.of(List.of(1.0, 2.0, 0.0, 3.0, -1.0, 1.0, -1.0, -1.0), 0);
        assertThat(runs.useful()).isEqualTo(7);
        assertThat(runs.longest()).isEqualTo(3);
        assertThat(runs.crossings()).isEqualTo(3);
    }

    @Test
    void a_shift_is_a_long_run_with_few_crossings() {
        List<Double> values =
                IntStream.range(0, 24).mapToObj(i -> i < 12 ? 1.0 : -1.0).toList();
        assertThat(Runs.of(values, 0).signals())
                .containsExactly(
                        new Signal(Signal.Kind.LONG_RUN, 0, 12, 8), new Signal(Signal.Kind.FEW_CROSSINGS, 0, 1, 8));
    }

    @Test
    void no_points_are_no_signal() {
        assertThat(Runs.of(List.of(), 0).signals()).isEmpty();
        assertThat(Runs.of(List.of(0.0, 0.0), 0).signals()).isEmpty();
        assertThat(Runs.of(List.of(5.0), 0).signals()).isEmpty();
    }
}

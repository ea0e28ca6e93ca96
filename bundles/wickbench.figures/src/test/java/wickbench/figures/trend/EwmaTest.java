package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class EwmaTest {
    private static final List<Double> VALUES = List.of(
            52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4,
            53.6, 52.1);
    private static final double[] AVERAGES = {
        50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92,
        50.73, 51.23, 51.94, 51.99
    };

    /** NIST/SEMATECH e-Handbook §6.3.2.4: from memory and recomputed; its lower limit 47.4115 is cut off, not rounded. */
    @Test
    void the_handbook_series() {
        LimitChart chart = new Ewma(50, 2.0539, .3, 3).of(VALUES);
        for (int i = 0; i < AVERAGES.length; i++) {
            assertThat(chart.points().get(i).value()).isEqualTo(AVERAGES[i], within(0.0051));
            assertThat(chart.points().get(i).upper()).isEqualTo(52.5884, within(5e-5));
            assertThat(chart.points().get(i).lower()).isEqualTo(47.411568, within(5e-7));
        }
        assertThat(chart.centre()).isEqualTo(50);
        assertThat((52.5884 - 50) / (3 * 2.0539)).isEqualTo(.4200840, within(1e-5));
        assertThat(Math.floor(chart.points().get(0).lower() * 1e4) / 1e4).isEqualTo(47.4115);
        assertThat(chart.signals()).isEmpty();
    }

    /** By hand: the first limits are L·σ·λ, and they grow towards those of many points. */
    @Test
    void starting_limits_are_narrower() {
        Ewma ewma = new Ewma(50, 2, .3, 3);
        LimitChart chart = ewma.withStartingLimits(VALUES);
        assertThat(chart.points().get(0).upper()).isEqualTo(50 + 3 * 2 * .3, within(1e-12));
        assertThat(chart.points().get(19).upper())
                .isEqualTo(ewma.of(VALUES).points().get(19).upper(), within(1e-5));
    }

    /** Computed with R 4.2.2, spc 0.6.7; the last is 1/P(|Z| > 3) = 370.398. */
    @Test
    void average_run_lengths() {
        assertThat(RunLength.ewma(.1, 2.7, 0)).isEqualTo(368.99, within(0.005));
        assertThat(RunLength.ewma(.1, 2.7, 1)).isEqualTo(9.730, within(0.0005));
        assertThat(RunLength.ewma(.2, 2.962, 0)).isEqualTo(499.74, within(0.005));
        assertThat(RunLength.limits(3, 0)).isEqualTo(370.398, within(0.0005));
        assertThat(RunLength.ewma(1, 3, 0)).isEqualTo(RunLength.limits(3, 0), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 1, .2, 3",
        "0, 0, .2, 3",
        "0, NaN, .2, 3",
        "0, 1, 0, 3",
        "0, 1, 1.1, 3",
        "0, 1, NaN, 3",
        "0, 1, .2, 0"
    })
    void refuses_what_is_no_chart(double target, double sigma, double weight, double width) {
        assertThatThrownBy(() -> new Ewma(target, sigma, weight, width)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_what_is_no_series() {
        Ewma ewma = new Ewma(0, 1, .2, 3);
        assertThatThrownBy(() -> ewma.of(List.of())).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ewma.of(List.of(Double.POSITIVE_INFINITY))).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> RunLength.ewma(0, 3, 0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> RunLength.cusum(5, 10, 0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> RunLength.limits(3, Double.NaN)).isInstanceOf(NoAnswer.class);
    }
}

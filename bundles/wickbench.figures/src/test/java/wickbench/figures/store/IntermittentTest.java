package wickbench.figures.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.figures.NoAnswer;

class IntermittentTest {
    private static final List<Double> DEMANDS = List.of(0.0, 0.0, 5.0, 0.0, 0.0, 0.0, 3.0, 0.0, 6.0, 0.0, 0.0, 4.0);

    /** Croston (1972); values computed with R 4.2.2, forecast 8.20 (croston), and by own code there. */
    @Test
    void smoothed_by_a_tenth() {
        Intermittent demand = Intermittent.of(DEMANDS, .1);
        assertThat(demand.size()).isEqualTo(4.828, within(1e-12));
        assertThat(demand.interval()).isEqualTo(2.991, within(1e-12));
        assertThat(demand.plain()).isEqualTo(1.614175861, within(5e-10));
        assertThat(demand.halfCorrected()).isEqualTo(1.533467068, within(5e-10));
    }

    /** The same with α = .2; 1.58490566 × (1 − .2/1.8) = 1.408805031 by hand. */
    @Test
    void smoothed_by_a_fifth() {
        Intermittent demand = Intermittent.of(DEMANDS, .2);
        assertThat(demand.size()).isEqualTo(4.704, within(1e-12));
        assertThat(demand.interval()).isEqualTo(2.968, within(1e-12));
        assertThat(demand.plain()).isEqualTo(1.58490566, within(5e-9));
        assertThat(demand.halfCorrected()).isEqualTo(1.426415094, within(5e-10));
        assertThat(demand.fullCorrected()).isEqualTo(1.408805031, within(5e-10));
    }

    /** By hand: the first demand and its interval start the smoothing. */
    @Test
    void one_demand_is_its_own_rate() {
        assertThat(Intermittent.of(List.of(0.0, 0.0, 0.0, 8.0), .1).plain()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -.1, 1.1, Double.NaN})
    void refuses_what_is_no_weight(double alpha) {
        assertThatThrownBy(() -> Intermittent.of(DEMANDS, alpha)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_what_is_no_demand() {
        assertThatThrownBy(() -> Intermittent.of(List.of(), .1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Intermittent.of(List.of(0.0, 0.0), .1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Intermittent.of(List.of(1.0, -1.0), .1))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        assertThatThrownBy(() -> Intermittent.of(List.of(Double.NaN), .1)).isInstanceOf(NoAnswer.class);
    }
}

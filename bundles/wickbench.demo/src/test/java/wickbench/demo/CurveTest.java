package wickbench.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CurveTest {

    @Test
    void a_strip_finds_its_limit_in_95_of_100_tries() {
        assertThat(Curve.detecting(6).at(new Load(0))).isCloseTo(0.95, within(1e-12));
        assertThat(Curve.detecting(5).at(new Load(0))).isCloseTo(0.95, within(1e-12));
    }

    @Property
    void more_allergen_is_never_found_less_often(
            @ForAll @DoubleRange(min = -9, max = 6) double low,
            @ForAll @DoubleRange(min = 0, max = 3) double more,
            @ForAll @DoubleRange(min = 2, max = 9) double slope) {
        Curve curve = Curve.detecting(slope);

        assertThat(curve.at(new Load(low + more))).isBetween(curve.at(new Load(low)), 1.0);
    }

    @Test
    void ten_times_thinner_is_one_tenfold_less() {
        assertThat(new Load(1.5).thinned(10).tenfolds()).isCloseTo(0.5, within(1e-12));
        assertThat(new Load(1.5).thinned(1)).isEqualTo(new Load(1.5));
    }
}

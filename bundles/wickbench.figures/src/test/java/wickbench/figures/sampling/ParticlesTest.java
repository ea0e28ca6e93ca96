package wickbench.figures.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.figures.NoAnswer;

class ParticlesTest {
    private static final double[] GRAMS = {1, 5, 10, 25, 50, 100, 250};

    /** Poisson law, computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "1, .0010 .0050 .0100 .0247 .0488 .0952 .2212",
        "5, .0050 .0247 .0488 .1175 .2212 .3935 .7135",
        "10, .0100 .0488 .0952 .2212 .3935 .6321 .9179",
        "20, .0198 .0952 .1813 .3935 .6321 .8647 .9933",
        "100, .0952 .3935 .6321 .9179 .9933 1.0000 1.0000"
    })
    void chance_that_a_portion_holds_a_particle(double perKg, String expected) {
        String[] chances = expected.split(" ");
        for (int i = 0; i < GRAMS.length; i++) {
            assertThat(new Particles(perKg).found(GRAMS[i])).isEqualTo(Double.parseDouble(chances[i]), within(0.00005));
        }
    }

    /** Mean 2, k = .5, computed with R 4.2.2. */
    @Test
    void clumps_hide() {
        Particles two = new Particles(2);
        assertThat(1 - two.foundClumped(1000, .5)).isEqualTo(.447214, within(5e-7));
        assertThat(1 - two.found(1000)).isEqualTo(.135335, within(5e-7));
        assertThat(two.foundClumped(1000, 1e9)).isEqualTo(two.found(1000), within(1e-8));
    }

    /** Computed with R 4.2.2. */
    @Test
    void a_composite_contains_at_least_one() {
        assertThat(new Composite(5).contains(.02)).isEqualTo(.096079, within(5e-7));
        assertThat(new Composite(10).contains(.02)).isEqualTo(.182927, within(5e-7));
        assertThat(new Composite(3).contains(1)).isEqualTo(1);
    }

    /** By hand: 25 mg/kg at a limit of 2.5 can be pooled tenfold; 0.3 at 0.1 threefold, although 0.3 ÷ 0.1 < 3 in floating point. */
    @Test
    void a_composite_dilutes() {
        assertThat(Composite.largest(25, 2.5)).isEqualTo(10);
        assertThat(Composite.largest(.3, .1)).isEqualTo(3);
        assertThat(Composite.largest(1, 2.5)).isZero();
        assertThat(new Composite(10).diluted(25)).isEqualTo(2.5);
    }

    /** Dorfman, Ann. Math. Stat. 14:436 (1943): from memory and recomputed. */
    @ParameterizedTest
    @CsvSource({".01, 11, .195571", ".02, 8, .274237", ".05, 5, .426219", ".10, 4, .593900"})
    void cheapest_pool(double p, int size, double tests) {
        Composite best = Composite.cheapest(p);
        assertThat(best.size()).isEqualTo(size);
        assertThat(best.testsPerItem(p)).isEqualTo(tests, within(5e-7));
    }

    @Test
    void pooling_saves_nothing_when_much_is_positive() {
        assertThat(Composite.cheapest(.5)).isEqualTo(new Composite(1));
        assertThat(Composite.cheapest(.5).testsPerItem(.5)).isEqualTo(1);
    }

    /**
     * Maximum likelihood of group tests, 3 of 10 pools of 5 positive; computed with R 4.2.2; the limits there were brought over from score
     * limits rounded to four decimals, hence the wider tolerance.
     */
    @Test
    void share_behind_pools() {
        PooledShare share = new PooledShare(3, 10, 5);
        assertThat(share.limits(.95).estimate()).isEqualTo(.068850, within(5e-7));
        assertThat(share.limits(.95).lower()).isEqualTo(.022555, within(1e-5));
        assertThat(share.limits(.95).upper()).isEqualTo(.168783, within(1e-5));
        assertThat(new PooledShare(10, 10, 5).limits(.95).upper()).isEqualTo(1);
        assertThat(new PooledShare(0, 10, 5).limits(.95).lower()).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void refuses_what_is_no_amount(double value) {
        assertThatThrownBy(() -> new Particles(value)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Particles(1).found(value)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Particles(1).foundClumped(1, value)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Composite.largest(value, 1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Composite.largest(1, value)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Composite.cheapest(value)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_what_is_no_pool() {
        assertThatThrownBy(() -> new Composite(0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new Composite(2).contains(1.5)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new PooledShare(4, 3, 5)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new PooledShare(-1, 3, 5)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new PooledShare(1, 3, 0)).isInstanceOf(NoAnswer.class);
    }
}

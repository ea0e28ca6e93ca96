package wickbench.figures.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NoAnswer;

class TwoReadersTest {
    private static final long[][] COHEN = {{88, 14, 18}, {10, 40, 10}, {2, 6, 12}};
    private static final long[][] FREQ = {{0, 4, 1}, {0, 8, 0}, {0, 1, 5}};

    /** Cohen, Educ. Psychol. Meas. 20:37 (1960), Table 2: kappa .492 (read in the help of the psych package); the rest R 4.2.2. */
    @Test
    void cohen_1960() {
        Kappa kappa = TwoReaders.of(COHEN).kappa(Weights.none(3), 0.95);
        assertThat(kappa.observed()).isEqualTo(0.70, within(1e-12));
        assertThat(kappa.expected()).isEqualTo(0.41, within(1e-12));
        assertThat(kappa.kappa().estimate()).isEqualTo(0.4915254, within(5e-8));
        assertThat(kappa.cohenSe()).isEqualTo(0.0549215, within(5e-8));
        assertThat(kappa.cohenSe0()).isEqualTo(0.0589455, within(5e-8));
        assertThat(kappa.kappa().estimate() / kappa.cohenSe0()).isEqualTo(8.3386, within(5.1e-5));
        assertThat(kappa.fleissSe()).isEqualTo(0.0510018, within(5e-8));
        assertThat(kappa.fleissSe0()).isEqualTo(0.0519789, within(5e-8));
        assertThat(kappa.z()).isEqualTo(9.4562, within(5.1e-5));
    }

    /** Cohen, Psychol. Bull. 70:213 (1968): .348 and .353 (read in the help of the psych package). */
    @Test
    void cohen_1968_with_weights_of_disagreement() {
        Weights first = Weights.of(new double[][] {{0, 1, 3}, {1, 0, 6}, {3, 6, 0}});
        assertThat(TwoReaders.of(COHEN).kappa(first, 0.95).kappa().estimate()).isEqualTo(0.3478261, within(5e-8));
        Weights second = Weights.of(new double[][] {{0, 1, 4}, {1, 0, 6}, {2, 2, 0}});
        assertThat(TwoReaders.of(COHEN).kappa(second, 0.95).kappa().estimate()).isEqualTo(0.353, within(5e-4));
    }

    /** Fleiss, Cohen and Everitt, Psychol. Bull. 72:323 (1969): table read, .429 from memory, the rest R 4.2.2. */
    @Test
    void fleiss_cohen_everitt_1969() {
        TwoReaders readers = TwoReaders.of(new long[][] {{106, 10, 4}, {22, 28, 10}, {2, 12, 6}});
        Kappa kappa = readers.kappa(Weights.none(3), 0.95);
        assertThat(kappa.kappa().estimate()).isEqualTo(0.428571, within(5e-7));
        assertThat(kappa.fleissSe()).isEqualTo(0.0537110, within(5e-8));
        assertThat(kappa.fleissSe0()).isEqualTo(0.0555125, within(5e-8));
        Weights weights = Weights.of(new double[][] {{1, 0, .4444}, {0, 1, .6667}, {.4444, .6667, 1}});
        assertThat(readers.kappa(weights, 0.95).kappa().estimate()).isEqualTo(0.50707, within(5e-6));
    }

    /** The example of the FREQ procedure in the tests of statsmodels (read): plain, then with linear weights. */
    @ParameterizedTest
    @CsvSource({
        "false, .4842, .1380, .2137, .7547, .1484, 3.2626, .0011",
        "true, .4701, .1457, .1845, .7558, .1426, 3.2971, .0010"
    })
    void freq_example(
            boolean linear, double value, double se, double lower, double upper, double se0, double z, double p) {
        Kappa kappa = TwoReaders.of(FREQ).kappa(linear ? Weights.linear(3) : Weights.none(3), 0.95);
        assertThat(kappa.kappa().estimate()).isEqualTo(value, within(5.1e-5));
        assertThat(kappa.fleissSe()).isEqualTo(se, within(5.1e-5));
        assertThat(kappa.kappa().lower()).isEqualTo(lower, within(5.1e-5));
        assertThat(kappa.kappa().upper()).isEqualTo(upper, within(5.1e-5));
        assertThat(kappa.fleissSe0()).isEqualTo(se0, within(5.1e-5));
        assertThat(kappa.z()).isEqualTo(z, within(5.1e-5));
        assertThat(kappa.p()).isEqualTo(p, within(5.1e-5));
    }

    /** The irrCAC vignette (read); AC1 computed in R 4.2.2. */
    @Test
    void gwet_vignette() {
        Kappa kappa =
                TwoReaders.of(new long[][] {{13, 0, 0}, {0, 20, 7}, {0, 4, 56}}).kappa(Weights.none(3), 0.95);
        assertThat(kappa.kappa().estimate()).isEqualTo(0.7964094, within(5e-8));
        assertThat(kappa.fleissSe()).isEqualTo(0.05891072, within(5.1e-9));
        assertThat(kappa.scott()).isEqualTo(0.7962397, within(5e-8));
        assertThat(kappa.ac1()).isEqualTo(0.8493305, within(5e-8));
    }

    /** AIAG, Measurement Systems Analysis, attribute study: tables and two digits from memory, six digits R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "44, 6, 3, 97, .862944",
        "42, 5, 9, 94, .788007",
        "43, 7, 8, 92, .776119",
        "45, 5, 3, 97, .878788",
        "45, 2, 3, 100, .922983",
        "42, 9, 6, 93, .773960"
    })
    void attribute_study_cross_tables(long a, long b, long c, long d, double expected) {
        TwoReaders readers = TwoReaders.of(new long[][] {{a, b}, {c, d}});
        assertThat(readers.kappa(Weights.none(2), 0.95).kappa().estimate()).isEqualTo(expected, within(1e-6));
    }

    @Test
    void what_is_no_table_of_two_readers_is_refused() {
        refused(new long[][] {{1}}, "agreement.two-categories");
        refused(new long[][] {{1, 2}, {3}}, "agreement.square");
        refused(new long[][] {{0, 0}, {0, 0}}, "table.all-zero");
        refused(new long[][] {{5, 0}, {0, 0}}, "agreement.one-category");
        refused(new long[][] {{5, -1}, {0, 0}}, "count.expected");
        assertThatThrownBy(() -> Weights.of(new double[][] {{2, 0}, {0, 2}})).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Weights.of(new double[][] {{0, 1}, {1, 1}})).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> TwoReaders.of(COHEN).kappa(Weights.none(2), 0.95))
                .isInstanceOf(NoAnswer.class);
    }

    private static void refused(long[][] counts, String code) {
        assertThatThrownBy(() -> TwoReaders.of(counts).kappa(Weights.none(2), 0.95))
                .isInstanceOfSatisfying(NoAnswer.class, none -> {
                    assertThat(none.code()).isEqualTo(code);
                    assertThat(none.text()).isNotBlank();
                });
    }
}

package wickbench.figures.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickbench.figures.CheckTable;
import wickbench.figures.NoAnswer;

class ZeroFailureTest {

    /** Computed with R 4.2.2; 22, 29, 59, 299 are textbook values, from memory. */
    @Test
    void zero_failure_sizes_of_large_lots() {
        CheckTable table = CheckTable.beside(getClass(), "zero_failure_n.csv");
        int seen = 0;
        for (double[] row : table.rows()) {
            for (int i = 1; i < row.length; i++) {
                assertThat(ZeroFailure.perfect(row[0], table.header()[i])
                                .anyLot()
                                .n())
                        .as("p %s C %s", row[0], table.header()[i])
                        .isEqualTo((int) row[i]);
                seen++;
            }
        }
        assertThat(seen).isEqualTo(65);
    }

    /** Computed with R 4.2.2 from the hypergeometric law, D = ⌈pN⌉. */
    @ParameterizedTest
    @ValueSource(ints = {90, 95, 99})
    void zero_failure_sizes_of_finite_lots(int percent) {
        CheckTable table = CheckTable.beside(getClass(), "hyper_zero_n_" + percent + ".csv");
        for (double[] row : table.rows()) {
            for (int i = 1; i < row.length; i++) {
                assertThat(n(ZeroFailure.perfect(table.header()[i], percent / 100d)
                                .lot((int) row[0])))
                        .as("N %s p %s", row[0], table.header()[i])
                        .isEqualTo((int) row[i]);
            }
        }
        assertThat(table.rows()).hasSize(10);
    }

    /** Computed with R 4.2.2 and epiR 2.0.57 (rsu.sssep.rs). */
    @Test
    void a_test_that_misses_asks_for_more() {
        assertThat(new ZeroFailure(.05, .95, .9).anyLot().n()).isEqualTo(66);
        assertThat(new ZeroFailure(.05, .95, .7).anyLot().n()).isEqualTo(85);
        assertThat(n(new ZeroFailure(.05, .95, .9).lot(500))).isEqualTo(63);
    }

    /** The approximation of Cannon and Roe (1982), computed with R 4.2.2. */
    @ParameterizedTest
    @CsvSource({"100, .05, 44.1705, 45", "200, .05, 50.6082, 51", "1000, .05, 56.7303, 57"})
    void the_published_approximation_is_near(int lot, double p, double approximate, int exact) {
        ZeroFailure search = ZeroFailure.perfect(p, .95);
        assertThat(search.approximateLot(lot)).isEqualTo(approximate, within(0.00005));
        assertThat(n(search.lot(lot))).isEqualTo(exact);
    }

    /** By hand: two samples of a half-faulty lot leave a quarter, and 9 of 10 items leave a tenth; both are met exactly. */
    @Test
    void a_confidence_met_exactly_is_met() {
        assertThat(ZeroFailure.perfect(.5, .75).anyLot().n()).isEqualTo(2);
        assertThat(ZeroFailure.perfect(.1, .19).anyLot().n()).isEqualTo(2);
        assertThat(n(ZeroFailure.perfect(.1, .9).lot(10))).isEqualTo(9);
        assertThat(ZeroFailure.perfect(.05, .95).faulty(100)).isEqualTo(5);
    }

    /** By hand: one faulty item seen with 90 % is never found with 95 %. */
    @Test
    void a_poor_test_may_never_be_enough() {
        assertThat(new ZeroFailure(.01, .95, .9).lot(50))
                .isInstanceOfSatisfying(
                        SampleSize.NoneIsEnough.class,
                        none -> assertThat(none.best()).isEqualTo(.9, within(1e-12)));
    }

    /** Hypergeometric chance of 63 from 500 with 25 faulty and sensitivity .9: 1 − .045992394, SciPy 1.17.1. */
    @Test
    void says_what_is_reached() {
        SampleSize.Enough enough = (SampleSize.Enough) new ZeroFailure(.05, .95, .9).lot(500);
        assertThat(enough.reached()).isEqualTo(1 - 0.04599239399223424, within(1e-11));
        assertThat(ZeroFailure.perfect(.05, .95).anyLot().reached()).isEqualTo(1 - Math.pow(.95, 59), within(1e-14));
    }

    @Test
    void all_faulty_takes_one_sample() {
        assertThat(ZeroFailure.perfect(1, .999).anyLot().n()).isEqualTo(1);
        assertThat(n(ZeroFailure.perfect(1, .999).lot(7))).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "0, .95, 1",
        "-.1, .95, 1",
        "1.1, .95, 1",
        "NaN, .95, 1",
        ".05, 0, 1",
        ".05, 1, 1",
        ".05, NaN, 1",
        ".05, .95, 0",
        ".05, .95, 1.1",
        ".05, .95, NaN",
        "1e-8, .95, .01"
    })
    void refuses_what_is_no_search(double prevalence, double confidence, double sensitivity) {
        assertThatThrownBy(() -> new ZeroFailure(prevalence, confidence, sensitivity))
                .isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_what_is_no_lot() {
        ZeroFailure search = ZeroFailure.perfect(.05, .95);
        assertThatThrownBy(() -> search.lot(0)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> search.lot(10_000_001)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ZeroFailure.perfect(1e-9, 1 - 1e-12).anyLot()).isInstanceOf(NoAnswer.class);
    }

    private static int n(SampleSize size) {
        return ((SampleSize.Enough) size).n();
    }
}

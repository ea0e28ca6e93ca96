package wickbench.figures.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wickbench.figures.NamedTable;
import wickbench.figures.NoAnswer;

class ManyReadersTest {

    /**
     * Fleiss, Psychol. Bull. 76:378 (1971): kappa .4302445 and z 17.65183 read in the tests of statsmodels (after the irr package);
     * the rest R 4.2.2.
     */
    @Test
    void fleiss_1971() {
        ManyReaders readers =
                ManyReaders.of(NamedTable.of("fleiss1971_counts.csv").counts());
        assertThat(readers.kappa()).isEqualTo(0.4302445, within(5.1e-8));
        assertThat(readers.z()).isEqualTo(17.65183, within(5.1e-6));
        assertThat(readers.observed()).isEqualTo(0.555556, within(5.1e-7));
        assertThat(readers.expected()).isEqualTo(0.219938, within(5.1e-7));
        assertThat(readers.se0()).isEqualTo(0.0243739, within(5.1e-8));
        assertThat(readers.ac1()).isEqualTo(0.447885, within(5.1e-7));
        assertThat(readers.freeMarginal()).isEqualTo(0.444444, within(5.1e-7));
        double[] shares = {.1444, .1444, .1667, .3056, .2389};
        double[] kappas = {.2448, .2448, .5200, .4711, .5661};
        for (int i = 0; i < shares.length; i++) {
            ManyReaders.Category category = readers.categories().get(i);
            assertThat(category.share()).isEqualTo(shares[i], within(5.1e-5));
            assertThat(category.kappa().getAsDouble()).isEqualTo(kappas[i], within(5.1e-5));
        }
    }

    /** Ten subjects, fourteen readers: kappa .210 as printed in an encyclopaedia (read); the rest R 4.2.2. */
    @Test
    void ten_subjects_and_fourteen_readers() {
        ManyReaders readers =
                ManyReaders.of(NamedTable.of("fleiss_10x5_14raters.csv").counts());
        assertThat(readers.kappa()).isEqualTo(0.2099307, within(5.1e-8));
        assertThat(readers.observed()).isEqualTo(0.378022, within(5.1e-7));
        assertThat(readers.expected()).isEqualTo(0.212755, within(5.1e-7));
        assertThat(readers.se0()).isEqualTo(0.0169651, within(5.1e-8));
        assertThat(readers.z()).isEqualTo(12.3743, within(5.1e-5));
        assertThat(readers.ac1()).isEqualTo(0.225614, within(5.1e-7));
        assertThat(readers.freeMarginal()).isEqualTo(0.222527, within(5.1e-7));
    }

    @Test
    void what_is_no_table_of_many_readers_is_refused() {
        assertThatThrownBy(() -> ManyReaders.of(new long[0][])).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ManyReaders.of(new long[][] {{3, 0}, {3, 0}})).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> ManyReaders.of(new long[][] {{3, 0}, {1, 1}}))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        assertThatThrownBy(() -> ManyReaders.of(new long[][] {{3, -1}})).isInstanceOf(NoAnswer.class);
        assertThat(ManyReaders.of(new long[][] {{2, 1, 0}, {1, 2, 0}})
                        .categories()
                        .get(2)
                        .kappa())
                .isEmpty();
    }
}

package wickbench.figures.detection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wickbench.figures.NamedTable;
import wickbench.figures.NoAnswer;

class LimitOfBlankTest {

    /** The blanks of the worked example of CLSI EP17-A2, lot 1 (read in the data of the sherloq package); computed in R 4.2.2. */
    @Test
    void ep17_lot_one() {
        NamedTable lot = NamedTable.of("ep17_blanks.csv").where("lot", "1");
        int samples =
                (int) lot.rows().stream().map(row -> row.get(1)).distinct().count();
        double[] blanks = lot.numbers("pg_ml");
        assertThat(blanks).hasSize(60);
        assertThat(LimitOfBlank.byRank(blanks)).isEqualTo(7.6, within(1e-12));
        LimitOfBlank.Parametric limit = LimitOfBlank.parametric(blanks, samples);
        assertThat(limit.mean()).isEqualTo(3.335, within(5.1e-7));
        assertThat(limit.sd()).isEqualTo(3.257473, within(5.1e-7));
        assertThat(limit.limit()).isEqualTo(8.71753, within(5.1e-6));
    }

    /** Twenty blanks and twenty low results, computed in SciPy 1.10.1. */
    @Test
    void blanks_and_low_results() {
        double[] blanks = {.3, -.2, .1, .4, -.1, 0, .2, -.3, .5, .1, -.2, 0, .3, .1, -.1, .2, 0, -.4, .3, .1};
        double[] low = {1.1, .7, 1.3, .9, 1.5, .8, 1.2, 1.0, .6, 1.4, 1.1, .9, 1.3, 1.0, .7, 1.2, .8, 1.1, 1.4, .9};
        LimitOfBlank.Parametric blank = LimitOfBlank.parametric(blanks, 1);
        assertThat(blank.mean()).isEqualTo(0.0650, within(1e-12));
        assertThat(blank.sd()).isEqualTo(0.2368099, within(5.1e-8));
        assertThat(blank.plain()).isEqualTo(0.4545524, within(5.1e-8));
        LimitOfBlank.Parametric detection = LimitOfBlank.detection(blank.plain(), low, 1);
        assertThat(detection.sd()).isEqualTo(0.2584875, within(5.1e-8));
        assertThat(detection.plain()).isEqualTo(0.8797643, within(1e-7));
        // computed with the percentile rounded to 1.645
        assertThat(detection.limit()).isEqualTo(0.8854338, within(5e-5));
    }

    @Test
    void too_few_results_are_refused() {
        assertThatThrownBy(() -> LimitOfBlank.byRank(new double[9])).isInstanceOf(NoAnswer.class);
        assertThat(LimitOfBlank.byRank(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10}))
                .isEqualTo(10);
        assertThatThrownBy(() -> LimitOfBlank.parametric(new double[] {1, 2}, 2))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> LimitOfBlank.parametric(new double[] {}, 1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> LimitOfBlank.byRank(new double[] {1, Double.NaN}))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
    }
}

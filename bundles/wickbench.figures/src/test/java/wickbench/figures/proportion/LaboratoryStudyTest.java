package wickbench.figures.proportion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wickbench.figures.NamedTable;
import wickbench.figures.NoAnswer;

class LaboratoryStudyTest {

    /** Ten laboratories of twelve tests: AOAC Official Methods, Appendix J, Table F1 (read); limits and homogeneity from R 4.2.2. */
    @Test
    void appendix_j_table_f1() {
        NamedTable table = NamedTable.of("appJ_tableF1.csv");
        Laboratories study = LaboratoryStudy.of(table.counts("positive"), table.counts("total"), 0.95);
        assertThat(study.lpod().estimate()).isEqualTo(0.633333, within(5e-7));
        assertThat(study.repeatability()).isEqualTo(0.224242, within(5e-7));
        assertThat(Math.sqrt(study.repeatability())).isEqualTo(0.473542, within(5e-7));
        assertThat(study.podVariance()).isEqualTo(0.0296296, within(5e-8));
        // printed 0.01093, which subtracts a rounded 0.0187
        assertThat(study.betweenLaboratories()).isEqualTo(0.0109428, within(5e-8));
        assertThat(Math.sqrt(study.betweenLaboratories())).isEqualTo(0.104608, within(5e-7));
        assertThat(study.reproducibility()).isEqualTo(0.235185, within(5e-7));
        assertThat(Math.sqrt(study.reproducibility())).isEqualTo(0.484959, within(5e-7));
        assertThat(study.byLaboratories()).isTrue();
        assertThat(study.lpod().lower()).isEqualTo(0.5102, within(5e-5));
        assertThat(study.lpod().upper()).isEqualTo(0.7565, within(5e-5));
        assertThat(study.homogeneity().orElseThrow().chiSquared()).isEqualTo(13.7799, within(5e-5));
        assertThat(study.homogeneity().orElseThrow().p()).isEqualTo(0.1304, within(5e-5));
    }

    @Test
    void where_all_detect_the_pooled_score_interval_stands() {
        long[] twelve = {12, 12, 12};
        Laboratories study = LaboratoryStudy.of(twelve, twelve, 0.95);
        assertThat(study.byLaboratories()).isFalse();
        assertThat(study.lpod()).isEqualTo(Interval.WILSON.of(36, 36, 0.95));
        assertThat(study.reproducibility()).isZero();
        assertThat(study.homogeneity()).isEmpty();
    }

    @Test
    void a_wrong_row_is_named() {
        assertThatThrownBy(() -> LaboratoryStudy.of(new long[] {1, 5}, new long[] {4, 4}, 0.95))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        long[] ones = {1, 1};
        assertThatThrownBy(() -> LaboratoryStudy.of(ones, ones, 0.95)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> LaboratoryStudy.of(Arrays.copyOf(ones, 1), Arrays.copyOf(ones, 1), 0.95))
                .isInstanceOf(NoAnswer.class);
    }
}

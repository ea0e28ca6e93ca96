package wickbench.figures.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.CheckTable;
import wickbench.figures.NoAnswer;

class CusumTest {

    /** NIST/SEMATECH e-Handbook §6.3.2.3: from memory and recomputed. */
    @Test
    void the_handbook_series() {
        List<double[]> table = CheckTable.beside(getClass(), "nist_cusum.csv").rows();
        Cusum.Chart chart = new Cusum(325, .3175, 4.1959).of(column(table, 1));
        for (int i = 0; i < table.size(); i++) {
            Cusum.Sums sums = chart.points().get(i);
            assertThat(sums.high()).isEqualTo(table.get(i)[2], within(5e-5));
            assertThat(sums.low()).isEqualTo(table.get(i)[3], within(5e-5));
            assertThat(sums.plain()).isEqualTo(table.get(i)[4], within(5e-5));
        }
        assertThat(table).hasSize(20);
        assertThat(chart.signals())
                .extracting(Signal::kind, Signal::point)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Signal.Kind.SUM_HIGH, 14));
        assertThat(chart.points().get(13).high()).isEqualTo(4.9400, within(5e-5));
    }

    /** Montgomery, Introduction to SQC, Examples 9.1 and 9.2: from memory and recomputed. */
    @Test
    void the_textbook_series() {
        List<double[]> table =
                CheckTable.beside(getClass(), "montgomery_cusum30.csv").rows();
        Cusum cusum = Cusum.inSigmas(10, 1, .5, 5);
        Cusum.Chart chart = cusum.of(column(table, 1));
        for (int i = 0; i < table.size(); i++) {
            Cusum.Sums sums = chart.points().get(i);
            assertThat(sums.high()).isEqualTo(table.get(i)[2], within(0.005));
            assertThat(sums.highRun()).isEqualTo((int) table.get(i)[3]);
            assertThat(sums.low()).isEqualTo(table.get(i)[4], within(0.005));
            assertThat(sums.lowRun()).isEqualTo((int) table.get(i)[5]);
        }
        assertThat(table).hasSize(30);
        assertThat(chart.points().stream().mapToDouble(Cusum.Sums::low).max().orElseThrow())
                .isEqualTo(1.77, within(0.005));
        assertThat(chart.signals()).extracting(Signal::point).containsExactly(29);
        assertThat(cusum.estimate(chart.points().get(28))).isEqualTo(10 + .5 + 5.28 / 7, within(0.001));
        assertThat(cusum.estimate(chart.points().get(28))).isEqualTo(11.25, within(0.005));
    }

    /** By hand: 3 below the target with k = 1 adds 2 a point; after two points the process seems to be at −3. */
    @Test
    void tells_a_fall_and_where_the_process_went() {
        Cusum cusum = new Cusum(0, 1, 3);
        Cusum.Chart chart = cusum.of(List.of(-3.0, -3.0, -3.0));
        assertThat(chart.signals()).containsExactly(new Signal(Signal.Kind.SUM_LOW, 2, 4, 3));
        assertThat(cusum.estimate(chart.points().get(1))).isEqualTo(-3);
        assertThat(cusum.estimate(cusum.of(List.of(0.5)).points().get(0))).isZero();
    }

    /** Average run lengths, two-sided, k = .5, computed with R 4.2.2, spc 0.6.7; Montgomery's Table 9.3 prints 168, 8.38, 465, 10.4. */
    @Test
    void average_run_lengths() {
        assertThat(RunLength.cusum(.5, 4, 0)).isEqualTo(167.68, within(0.005));
        assertThat(RunLength.cusum(.5, 4, 1)).isEqualTo(8.383, within(0.0005));
        assertThat(RunLength.cusum(.5, 5, 0)).isEqualTo(465.44, within(0.005));
        assertThat(RunLength.cusum(.5, 5, 1)).isEqualTo(10.376, within(0.0005));
        assertThat(RunLength.cusum(.5, 4.77, 0)).isEqualTo(368.56, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"NaN, .5, 5", "10, -1, 5", "10, NaN, 5", "10, .5, 0", "10, .5, NaN"})
    void refuses_what_is_no_chart(double target, double k, double h) {
        assertThatThrownBy(() -> new Cusum(target, k, h)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void refuses_what_is_no_series() {
        Cusum cusum = new Cusum(0, 1, 3);
        assertThatThrownBy(() -> cusum.of(List.of())).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> cusum.of(List.of(1.0, Double.NaN)))
                .isInstanceOfSatisfying(
                        NoAnswer.class, none -> assertThat(none.row()).hasValue(1));
        assertThatThrownBy(() -> Cusum.inSigmas(0, 0, .5, 5)).isInstanceOf(NoAnswer.class);
    }

    private static List<Double> column(List<double[]> table, int column) {
        return table.stream().map(row -> row[column]).toList();
    }
}

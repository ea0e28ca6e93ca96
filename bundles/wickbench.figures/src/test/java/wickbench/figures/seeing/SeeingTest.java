package wickbench.figures.seeing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.NamedTable;
import wickbench.figures.NoAnswer;

class SeeingTest {
    private static final double FOUR_PLACES = 5.1e-5;

    /** Macmillan and Creelman, Detection Theory (2005), chapter 1: 1.095 from memory; the rest computed in R 4.2.2 (psyphy). */
    @ParameterizedTest
    @CsvSource({"20, 25, 10, 25, 1.0950, -.2941, .7246", "24, 25, 1, 25, 3.5014, 0, 1"})
    void plain_figures(long h, long s, long f, long n, double dPrime, double criterion, double beta) {
        Sensitivity plain = Sensitivity.of(h, s, f, n).orElseThrow();
        assertThat(plain.dPrime()).isEqualTo(dPrime, within(FOUR_PLACES));
        assertThat(plain.criterion()).isEqualTo(criterion, within(FOUR_PLACES));
        assertThat(plain.beta()).isEqualTo(beta, within(FOUR_PLACES));
    }

    /** Log-linear correction of Hautus (1995), computed in R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "20, 25, 10, 25, 1.0445, -.2788",
        "25, 25, 0, 25, 4.1398, 0",
        "20, 20, 0, 20, 3.9615, 0",
        "24, 25, 1, 25, 3.1489, 0",
        "50, 50, 2, 50, 3.9882, -.3397"
    })
    void corrected_figures(long h, long s, long f, long n, double dPrime, double criterion) {
        Sensitivity corrected = Sensitivity.corrected(h, s, f, n);
        assertThat(corrected.dPrime()).isEqualTo(dPrime, within(FOUR_PLACES));
        assertThat(corrected.criterion()).isEqualTo(criterion, within(FOUR_PLACES));
    }

    /** As many hits missing as alarms given: leaning to neither side, to the last digit. */
    @ParameterizedTest
    @CsvSource({"25, 0", "24, 1", "20, 5", "13, 12"})
    void an_even_reader_leans_to_neither_side(long hits, long alarms) {
        assertThat(Sensitivity.corrected(hits, 25, alarms, 25).criterion()).isZero();
    }

    @Test
    void a_perfect_reader_has_no_plain_figure() {
        assertThat(Sensitivity.of(25, 25, 0, 25)).isEmpty();
        assertThat(Sensitivity.of(50, 50, 2, 50)).isEmpty();
        assertThatThrownBy(() -> Sensitivity.corrected(3, 2, 0, 1)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> Sensitivity.of(0, 0, 0, 1)).isInstanceOf(NoAnswer.class);
    }

    /** Computed in R 4.2.2. */
    @Test
    void rates_and_two_alternatives() {
        Sensitivity rates = Sensitivity.ofRates(.90, .20);
        assertThat(rates.dPrime()).isEqualTo(2.123173, within(5.1e-7));
        assertThat(rates.criterion()).isEqualTo(-0.219965, within(5.1e-7));
        assertThat(rates.beta()).isEqualTo(0.626865, within(5.1e-7));
        assertThat(Sensitivity.ofTwoAlternatives(.8)).isEqualTo(1.190232, within(5.1e-7));
        assertThat(Sensitivity.ofRates(.5, .5).area()).isEqualTo(0.5);
    }

    /** A synthetic reader with guesses and lapses; maximum likelihood by R optim (BFGS), with and without lapses. */
    @Test
    void psychometric_curve_with_guess_and_lapse() {
        NamedTable table = NamedTable.of("lapse_synthetic.csv");
        double[] x = table.numbers("x");
        Psychometric lapsing = PsychometricFit.of(x, table.counts("n"), table.counts("yes"), PsychometricFit.USUAL_CAP);
        assertThat(lapsing.mean()).isEqualTo(0.041843, within(2e-5));
        assertThat(lapsing.spread()).isEqualTo(0.701231, within(2e-5));
        assertThat(lapsing.guess()).isEqualTo(0.020675, within(2e-5));
        assertThat(lapsing.lapse()).isEqualTo(0.041624, within(2e-5));
        assertThat(lapsing.minusLogLikelihood()).isEqualTo(13.920171, within(1e-6));
        Psychometric without = PsychometricFit.of(x, table.counts("n"), table.counts("yes"), 0);
        assertThat(without.mean()).isEqualTo(0.093501, within(2e-5));
        assertThat(without.spread()).isEqualTo(0.907058, within(2e-5));
        assertThat(without.minusLogLikelihood()).isEqualTo(15.577531, within(1e-6));
    }

    @Test
    void a_cap_that_binds_is_kept() {
        NamedTable table = NamedTable.of("lapse_synthetic.csv");
        Psychometric capped = PsychometricFit.of(table.numbers("x"), table.counts("n"), table.counts("yes"), 0.03);
        assertThat(capped.lapse()).isEqualTo(0.03);
        assertThat(capped.minusLogLikelihood()).isGreaterThan(13.920171);
        assertThatThrownBy(() -> PsychometricFit.of(new double[] {1, 2}, new long[] {5, 5}, new long[] {0, 5}, 0))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> PsychometricFit.of(new double[] {1, 2}, new long[] {5, 5}, new long[] {0, 6}, 0))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> PsychometricFit.of(new double[] {1, 2}, new long[] {5, 5}, new long[] {1, 4}, .5))
                .isInstanceOf(NoAnswer.class);
    }

    /** Levitt, J. Acoust. Soc. Am. 49:467 (1971), from memory, recomputed; Kaernbach (1991). */
    @Test
    void where_staircases_settle() {
        double[] targets = {0.5, 0.7071, 0.7937, 0.8409, 0.8706};
        for (int down = 1; down <= targets.length; down++) {
            assertThat(Staircase.target(down)).isEqualTo(targets[down - 1], within(FOUR_PLACES));
        }
        assertThat(Staircase.weightedStep(0.75)).isEqualTo(3, within(1e-12));
    }

    /** Two down, one up, computed by hand and in R 4.2.2. */
    @Test
    void a_staircase_run() {
        Staircase staircase = Staircase.start(10, 1, 2);
        List<Double> levels = new ArrayList<>();
        for (char answer : "YYYYNYYNYYNYNYYYYNYYNYY".toCharArray()) {
            levels.add(staircase.level());
            staircase = staircase.answered(answer == 'Y');
        }
        assertThat(levels)
                .containsExactly(
                        10d, 10d, 9d, 9d, 8d, 9d, 9d, 8d, 9d, 9d, 8d, 9d, 9d, 10d, 10d, 9d, 9d, 8d, 9d, 9d, 8d, 9d, 9d);
        assertThat(staircase.level()).isEqualTo(8);
        assertThat(staircase.reversals()).containsExactly(8d, 9d, 8d, 9d, 8d, 10d, 8d, 9d, 8d, 9d);
        assertThat(staircase.meanOfLast(6).getAsDouble()).isEqualTo(8.666667, within(5.1e-7));
        assertThat(staircase.meanOfLast(11)).isEmpty();
    }

    /** Kontsevich and Tyler, Vision Res. 39:2729 (1999); a small grid computed in R 4.2.2, entropies in bits. */
    @Test
    void the_least_entropy_run() {
        LeastEntropy procedure = LeastEntropy.start(new SeeingGrid(
                new double[] {-1, 0, 1},
                new double[] {1, 3},
                new double[] {-2, -1, 0, 1, 2},
                new double[] {0},
                new double[] {0.02}));
        holds(procedure, 2.584963, new double[] {2.505373, 2.406445, 2.304524, 2.423208, 2.524537}, 0, 0, 2);
        procedure = procedure.answered(0, true);
        holds(procedure, 2.290063, new double[] {2.215563, 2.159923, 2.097727, 2.170862, 2.239114}, 0, -0.455755, 2);
        procedure = procedure.answered(0, false);
        holds(
                procedure,
                2.371025,
                new double[] {2.291753, 2.234717, 2.237884, 2.246031, 2.308799},
                -1,
                -0.026707,
                1.710117);
        procedure = procedure.answered(-1, true);
        holds(
                procedure,
                1.977190,
                new double[] {1.919528, 1.897062, 1.859104, 1.893447, 1.938053},
                0,
                -0.465533,
                1.366011);
    }

    private static void holds(
            LeastEntropy procedure, double entropy, double[] expected, double next, double threshold, double slope) {
        assertThat(procedure.entropy()).isEqualTo(entropy, within(5.1e-7));
        assertThat(procedure.expectedEntropy()).containsExactly(expected, within(5.1e-7));
        assertThat(procedure.next()).isEqualTo(next);
        assertThat(procedure.threshold()).isEqualTo(threshold, within(5.1e-7));
        assertThat(procedure.slope()).isEqualTo(slope, within(5.1e-7));
    }

    /** Who says yes to nothing guesses, and nothing else is learnt of them; worked by hand. */
    @Test
    void answers_to_nothing_tell_of_guessing_alone() {
        LeastEntropy procedure = LeastEntropy.start(new SeeingGrid(
                new double[] {0, 1}, new double[] {2}, new double[] {0}, new double[] {0, 0.2}, new double[] {0.1}));
        assertThat(procedure.guess()).isEqualTo(0.1, within(1e-12));
        LeastEntropy refrained = procedure.answeredNothing(false);
        assertThat(refrained.guess()).isEqualTo(0.2 * 0.8 / 1.8, within(1e-12));
        assertThat(refrained.threshold()).isEqualTo(procedure.threshold(), within(1e-12));
        assertThat(procedure.answeredNothing(true).guess()).isEqualTo(0.2, within(1e-12));
        assertThat(procedure.answered(9, false).lapse()).isEqualTo(0.1, within(1e-12));
    }

    /** What may be guessed and lapsed is summed over: one value thought possible twice tells what it tells once. */
    @Test
    void entropy_is_that_of_threshold_and_slope() {
        double[] thresholds = {-1, 0, 1};
        double[] levels = {-1, 0, 1};
        LeastEntropy once = LeastEntropy.start(
                new SeeingGrid(thresholds, new double[] {1, 3}, levels, new double[] {0.1}, new double[] {0.02}));
        LeastEntropy twice = LeastEntropy.start(new SeeingGrid(
                thresholds, new double[] {1, 3}, levels, new double[] {0.1, 0.1}, new double[] {0.02, 0.02}));
        for (double level : levels) {
            once = once.answered(level, level > 0);
            twice = twice.answered(level, level > 0);
            assertThat(twice.entropy()).isEqualTo(once.entropy(), within(1e-12));
            assertThat(twice.expectedEntropy()).containsExactly(once.expectedEntropy(), within(1e-12));
        }
    }

    /** Three thresholds believed alike stand for stretches of 1 from −1.5 to 1.5; worked by hand. */
    @Test
    void limits_of_the_threshold() {
        LeastEntropy procedure = LeastEntropy.start(new SeeingGrid(
                new double[] {-1, 0, 1}, new double[] {1}, new double[] {0}, new double[] {0}, new double[] {0}));
        assertThat(procedure.thresholdAt(0.5)).isEqualTo(0, within(1e-12));
        assertThat(procedure.thresholdAt(0.05)).isEqualTo(-1.35, within(1e-12));
        assertThat(procedure.thresholdAt(0.95)).isEqualTo(1.35, within(1e-12));
        LeastEntropy seen = procedure.answered(0, true);
        assertThat(seen.thresholdAt(0.5)).isLessThan(-0.2);
        assertThatThrownBy(() -> seen.thresholdAt(1)).isInstanceOf(NoAnswer.class);
    }

    @Test
    void grids_without_room_are_refused() {
        double[] one = {1};
        double[] none = {0};
        double[] half = {0.5};
        assertThatThrownBy(() -> new SeeingGrid(one, one, one, half, half)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new SeeingGrid(one, none, one, none, none)).isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new SeeingGrid(new double[] {}, one, one, none, none))
                .isInstanceOf(NoAnswer.class);
        assertThatThrownBy(() -> new SeeingGrid(new double[] {1, 1}, one, one, none, none))
                .isInstanceOf(NoAnswer.class);
    }
}

package wickbench.figures.proportion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.figures.Limits;
import wickbench.figures.NoAnswer;

class IntervalTest {
    private static final double FOUR_PLACES = 5.1e-5;

    /** Newcombe, Stat. Med. 17:857 (1998), Table I: the score column read there, the others from memory; all recomputed in R 4.2.2. */
    @ParameterizedTest
    @CsvSource({
        "WILSON, 81, 263, .2553, .3662",
        "WILSON, 15, 148, .0624, .1605",
        "WILSON, 0, 20, 0, .1611",
        "WILSON, 1, 29, .0061, .1718",
        "WILSON_CORRECTED, 81, 263, .2535, .3682",
        "WILSON_CORRECTED, 15, 148, .0598, .1644",
        "WILSON_CORRECTED, 0, 20, 0, .2005",
        "WILSON_CORRECTED, 1, 29, .0018, .1963",
        "EXACT, 81, 263, .2527, .3676",
        "EXACT, 15, 148, .0578, .1617",
        "EXACT, 0, 20, 0, .1684",
        "EXACT, 1, 29, .0009, .1776",
        "MID_P, 81, 263, .2544, .3658",
        "MID_P, 15, 148, .0601, .1581",
        "MID_P, 0, 20, 0, .1391",
        "MID_P, 1, 29, .0017, .1585"
    })
    void newcombe_table_one(Interval interval, long x, long n, double lower, double upper) {
        holds(interval.of(x, n, 0.95), (double) x / n, lower, upper);
    }

    /**
     * Score and exact limits as printed in a table of detection: formula read in AOAC Official Methods, Appendix J; values computed
     * in R 4.2.2. The rounded constants that the guideline prints agree to a unit of the fourth place.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 5, 0, .4345, 0, .5218",
        "5, 5, .5655, 1, .4782, 1",
        "0, 10, 0, .2775, 0, .3085",
        "9, 10, .5958, .9821, .5550, .9975",
        "0, 12, 0, .2425, 0, .2646",
        "4, 12, .1381, .6094, .0992, .6511",
        "12, 12, .7575, 1, .7354, 1",
        "1, 20, .0089, .2361, .0013, .2487",
        "10, 20, .2993, .7007, .2720, .7280",
        "16, 20, .5840, .9193, .5634, .9427",
        "19, 20, .7639, .9911, .7513, .9987",
        "20, 20, .8389, 1, .8316, 1",
        "29, 30, .8333, .9941, .8278, .9992",
        "30, 30, .8865, 1, .8843, 1",
        "0, 60, 0, .0602, 0, .0596",
        "59, 60, .9114, .9971, .9106, .9996",
        "60, 60, .9398, 1, .9404, 1"
    })
    void table_of_detection(long x, long n, double lower, double upper, double exactLower, double exactUpper) {
        holds(Interval.WILSON.of(x, n, 0.95), (double) x / n, lower, upper);
        holds(Interval.EXACT.of(x, n, 0.95), (double) x / n, exactLower, exactUpper);
    }

    /** Score limits also printed in published test suites (read). */
    @ParameterizedTest
    @CsvSource({"2, 10, .0567, .5098", "0, 40, 0, .0876", "1, 10, .0179, .4042"})
    void score_limits_printed_elsewhere(long x, long n, double lower, double upper) {
        holds(Interval.WILSON.of(x, n, 0.95), (double) x / n, lower, upper);
    }

    @Test
    void the_ends_are_exactly_zero_and_one() {
        for (Interval interval : Interval.values()) {
            for (long n = 1; n < 200; n++) {
                assertThat(interval.of(0, n, 0.95).lower()).isZero();
                assertThat(interval.of(n, n, 0.95).upper()).isEqualTo(1);
            }
        }
    }

    /** Half of (1−p)^n is the tail at 0/n, so the limit has a closed form. */
    @Test
    void mid_p_at_zero_has_a_closed_form() {
        for (long n = 1; n < 500; n++) {
            double expected = -Math.expm1(Math.log(0.05) / n);
            assertThat(Interval.MID_P.of(0, n, 0.95).upper()).isEqualTo(expected, within(expected * 2e-14));
        }
    }

    @Test
    void impossible_counts_and_levels_are_refused() {
        for (Interval interval : Interval.values()) {
            assertThatThrownBy(() -> interval.of(3, 2, 0.95)).isInstanceOf(NoAnswer.class);
            assertThatThrownBy(() -> interval.of(-1, 2, 0.95)).isInstanceOf(NoAnswer.class);
            assertThatThrownBy(() -> interval.of(0, 0, 0.95)).isInstanceOf(NoAnswer.class);
            assertThatThrownBy(() -> interval.of(1, 2, 0)).isInstanceOf(NoAnswer.class);
            assertThatThrownBy(() -> interval.of(1, 2, 1)).isInstanceOf(NoAnswer.class);
            assertThatThrownBy(() -> interval.of(1, 2, Double.NaN)).isInstanceOf(NoAnswer.class);
        }
    }

    private static void holds(Limits limits, double estimate, double lower, double upper) {
        assertThat(limits.estimate()).isEqualTo(estimate);
        assertThat(limits.lower()).isEqualTo(lower, within(FOUR_PLACES));
        assertThat(limits.upper()).isEqualTo(upper, within(FOUR_PLACES));
    }
}

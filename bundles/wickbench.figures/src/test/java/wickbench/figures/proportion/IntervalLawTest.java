package wickbench.figures.proportion;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import wickbench.figures.Limits;
import wickbench.figures.distribution.Binomial;

class IntervalLawTest {

    @Property(tries = 500)
    void limits_hold_the_estimate(
            @ForAll Interval interval,
            @ForAll @IntRange(min = 1, max = 5000) int n,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 0.999) double level) {
        Limits limits = interval.of(Math.round(share * n), n, level);
        assertThat(limits.lower()).isBetween(0.0, limits.estimate());
        assertThat(limits.upper()).isBetween(limits.estimate(), 1.0);
    }

    @Property(tries = 500)
    void more_tests_of_the_same_kind_narrow_the_limits(
            @ForAll Interval interval,
            @ForAll @IntRange(min = 1, max = 500) int n,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share) {
        long x = Math.round(share * n);
        Limits few = interval.of(x, n, 0.95);
        Limits many = interval.of(4 * x, 4L * n, 0.95);
        assertThat(many.upper() - many.lower()).isLessThan(few.upper() - few.lower());
    }

    @Property(tries = 500)
    void counting_negatives_mirrors_the_limits(
            @ForAll Interval interval,
            @ForAll @IntRange(min = 1, max = 500) int n,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share) {
        long x = Math.round(share * n);
        Limits positives = interval.of(x, n, 0.95);
        Limits negatives = interval.of(n - x, n, 0.95);
        assertThat(positives.lower()).isCloseTo(1 - negatives.upper(), org.assertj.core.data.Offset.offset(1e-13));
    }

    /** The exact interval covers the truth with at least its level, whatever the truth. */
    @Property(tries = 200)
    void exact_limits_hold_their_level(
            @ForAll @IntRange(min = 1, max = 60) int n,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.999) double truth) {
        Binomial chance = new Binomial(n, truth);
        double covered = 0;
        for (int x = 0; x <= n; x++) {
            Limits limits = Interval.EXACT.of(x, n, 0.95);
            covered += limits.lower() <= truth && truth <= limits.upper() ? chance.mass(x) : 0;
        }
        assertThat(covered).isGreaterThanOrEqualTo(0.95 - 1e-12);
    }
}

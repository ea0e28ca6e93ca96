package wickbench.figures.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

class SamplingLawsTest {

    @Property
    void operating_characteristics_fall(
            @ForAll @IntRange(min = 1, max = 400) int n,
            @ForAll @IntRange(max = 399) int accept,
            @ForAll @Scale(4) @DoubleRange(max = 1) double p,
            @ForAll @Scale(4) @DoubleRange(max = 1) double q) {
        Plan plan = new Plan(n, accept % n);
        double better = Math.min(p, q);
        double worse = Math.max(p, q);
        assertThat(plan.acceptance(worse)).isBetween(0.0, plan.acceptance(better) + 1e-13);
        assertThat(plan.acceptance(better)).isLessThanOrEqualTo(1);
    }

    @Property
    void the_share_accepted_is_accepted_with_that_chance(
            @ForAll @IntRange(min = 1, max = 400) int n,
            @ForAll @IntRange(max = 399) int accept,
            @ForAll @Scale(4) @DoubleRange(min = .01, max = .99) double chance) {
        Plan plan = new Plan(n, accept % n);
        assertThat(plan.acceptance(plan.shareAccepted(chance))).isEqualTo(chance, within(1e-10));
    }

    @Property
    void nothing_leaves_worse_than_the_outgoing_limit(
            @ForAll @IntRange(min = 1, max = 400) int n,
            @ForAll @IntRange(max = 399) int accept,
            @ForAll @Scale(4) @DoubleRange(max = 1) double p) {
        Plan plan = new Plan(n, accept % n);
        assertThat(plan.outgoing(p)).isLessThanOrEqualTo(plan.outgoingLimit().share() + 1e-13);
    }

    /** The number is enough and one less is not, by the hypergeometric chance itself. */
    @Property(tries = 300)
    void the_sample_of_a_lot_is_the_smallest_that_is_enough(
            @ForAll @IntRange(min = 2, max = 3000) int lot,
            @ForAll @Scale(4) @DoubleRange(min = .001, max = .999) double p,
            @ForAll @Scale(4) @DoubleRange(min = .5, max = .999) double confidence) {
        ZeroFailure search = ZeroFailure.perfect(p, confidence);
        SampleSize.Enough size = (SampleSize.Enough) search.lot(lot);
        LotMisses misses = new LotMisses(lot, search.faulty(lot));
        assertThat(size.reached()).isGreaterThanOrEqualTo(confidence - 1e-9);
        assertThat(1 - misses.chance(size.n() - 1, 1)).isLessThan(confidence + 1e-9);
        assertThat(size.n()).isLessThanOrEqualTo(search.anyLot().n());
    }

    /** Whoever misses more must look at more, and what is asked for is reached. */
    @Property(tries = 300)
    void a_poorer_test_takes_more_samples(
            @ForAll @IntRange(min = 2, max = 3000) int lot,
            @ForAll @Scale(4) @DoubleRange(min = .01, max = .9) double p,
            @ForAll @Scale(4) @DoubleRange(min = .3, max = .99) double sensitivity) {
        ZeroFailure poor = new ZeroFailure(p, .95, sensitivity);
        assertThat(poor.anyLot().n())
                .isGreaterThanOrEqualTo(ZeroFailure.perfect(p, .95).anyLot().n());
        if (poor.lot(lot) instanceof SampleSize.Enough enough) {
            assertThat(enough.reached()).isGreaterThanOrEqualTo(.95 - 1e-9);
            assertThat(enough.n()).isLessThanOrEqualTo(lot);
        }
    }

    @Property
    void what_nothing_found_allows_shrinks(
            @ForAll @IntRange(min = 1, max = 100_000) int n,
            @ForAll @Scale(4) @DoubleRange(min = .5, max = .999) double confidence) {
        double share = new NothingFound(n).largestShare(confidence);
        assertThat(share).isBetween(0.0, 1.0);
        assertThat(new NothingFound(n + 1).largestShare(confidence)).isLessThan(share);
    }

    @Property
    void a_larger_portion_finds_more_and_clumps_find_less(
            @ForAll @Scale(4) @DoubleRange(max = 500) double perKg,
            @ForAll @Scale(4) @DoubleRange(min = .1, max = 1000) double grams,
            @ForAll @Scale(4) @DoubleRange(min = .05, max = 50) double clumping) {
        Particles particles = new Particles(perKg);
        assertThat(particles.found(2 * grams)).isGreaterThanOrEqualTo(particles.found(grams));
        assertThat(particles.foundClumped(grams, clumping)).isLessThanOrEqualTo(particles.found(grams) + 1e-15);
    }
}

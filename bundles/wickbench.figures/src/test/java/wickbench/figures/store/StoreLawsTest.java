package wickbench.figures.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class StoreLawsTest {

    @Property
    void the_kinetic_mean_lies_between_the_mean_and_the_highest(
            @ForAll("spells") List<Spell> spells, @ForAll @Scale(2) @DoubleRange(min = 20, max = 300) double heat) {
        Warmth warmth = Warmth.of(spells, new Ageing(heat));
        assertThat(warmth.kinetic()).isBetween(warmth.mean() - 1e-9, warmth.highest() + 1e-9);
        assertThat(warmth.mean()).isBetween(warmth.lowest() - 1e-9, warmth.highest() + 1e-9);
    }

    /** What the one temperature is for: it costs as much shelf life as the true ones together. */
    @Property
    void the_kinetic_mean_ages_as_much(@ForAll("spells") List<Spell> spells) {
        Ageing ageing = Ageing.usual();
        Warmth warmth = Warmth.of(spells, ageing);
        double used = spells.stream()
                .mapToDouble(spell -> ageing.shelfLifeUsed(spell, 5))
                .sum();
        double constant = ageing.shelfLifeUsed(new Spell(warmth.hours(), warmth.kinetic()), 5);
        assertThat(constant / used).isEqualTo(1, within(1e-10));
    }

    @Property
    void more_service_takes_more_stock(
            @ForAll @Scale(2) @DoubleRange(max = 200) double demand,
            @ForAll @Scale(4) @DoubleRange(min = .5, max = .99) double service) {
        Reorder.Supply supply = new Reorder.Supply(demand, 3, 4, 1);
        assertThat(Reorder.normal(supply, service + .005).point())
                .isGreaterThan(Reorder.normal(supply, service).point());
        assertThat(Reorder.poisson(demand, service + .005).point())
                .isGreaterThanOrEqualTo(Reorder.poisson(demand, service).point());
    }

    @Property
    void corrections_lower_the_rate(
            @ForAll("demands") List<Double> demands, @ForAll @Scale(2) @DoubleRange(min = .01, max = 1) double alpha) {
        Intermittent demand = Intermittent.of(demands, alpha);
        assertThat(demand.halfCorrected()).isLessThan(demand.plain());
        assertThat(demand.fullCorrected()).isLessThanOrEqualTo(demand.halfCorrected());
        assertThat(demand.fullCorrected()).isGreaterThanOrEqualTo(0);
    }

    @Provide
    Arbitrary<List<Spell>> spells() {
        Arbitrary<Double> hours = Arbitraries.doubles().between(.01, 1000).ofScale(2);
        Arbitrary<Double> celsius = Arbitraries.doubles().between(-30, 60).ofScale(2);
        return Combinators.combine(hours, celsius)
                .as(Spell::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(40);
    }

    @Provide
    Arbitrary<List<Double>> demands() {
        return Arbitraries.integers()
                .between(0, 9)
                .map(Integer::doubleValue)
                .list()
                .ofMaxSize(30)
                .map(rest -> java.util.stream.Stream.concat(java.util.stream.Stream.of(1.0), rest.stream())
                        .toList());
    }
}

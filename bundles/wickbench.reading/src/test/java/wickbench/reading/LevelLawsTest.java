package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wickbench.api.method.Format;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Unit;
import wickbench.api.reading.Outcome;

class LevelLawsTest {
    @Property
    void tenTimesTheLimitIsTenTimesTheLevel(@ForAll long seed, @ForAll Route route, @ForAll Holds holds) {
        Given given = given(seed, route, holds);
        BigDecimal before = high(given);
        given.limit = new Quantity(given.limit.value().multiply(BigDecimal.TEN), given.limit.unit());
        assertThat(high(given)).isEqualByComparingTo(before.multiply(BigDecimal.TEN));
    }

    @Property
    void aDilutionByPowersOfTenMultipliesEveryLevel(
            @ForAll long seed, @ForAll Route route, @ForAll Holds holds, @ForAll @IntRange(max = 6) int power) {
        Given given = given(seed, route, holds);
        BigDecimal before = high(given);
        given.dilution = BigDecimal.ONE.movePointRight(power);
        assertThat(high(given)).isEqualByComparingTo(before.movePointRight(power));
    }

    @Property
    void thePreparationNeverTouchesASampleLimitOfFoodOrRinse(@ForAll long seed, @ForAll Route route) {
        if (!route.swab()) {
            Given given = given(seed, route, Holds.IN_SAMPLE);
            assertThat(high(given)).isEqualByComparingTo(given.limit.value());
        }
    }

    @Property
    void aSmallerAreaNeverLowersWhatANegativeAllows(@ForAll long seed, @ForAll Holds holds) {
        Given given = given(seed, Route.SWAB_DRY, holds);
        BigDecimal before = high(given);
        given.area = Optional.of(given.taken.value().divide(BigDecimal.valueOf(4)));
        // the last of twelve digits may be rounded
        assertThat(high(given)
                        .divide(before.multiply(BigDecimal.valueOf(4)), MathContext.DECIMAL64)
                        .subtract(BigDecimal.ONE)
                        .abs())
                .isLessThan(new BigDecimal("1e-11"));
    }

    private static Given given(long seed, Route route, Holds holds) {
        Anything any = new Anything(seed);
        return new Given(Format.SANDWICH_HOOK).with(g -> {
            g.route = route;
            g.holds = holds;
            g.limit = new Quantity(any.above(), any.oneOf(Anything.units(route, holds)));
            g.taken = new Quantity(any.above(), route.swab() ? Unit.CM2 : Unit.ML);
        });
    }

    private static BigDecimal high(Given given) {
        return Levels.of(given.method(), given.sample(), Outcome.NEGATIVE)
                .orElseThrow()
                .high()
                .orElseThrow();
    }
}

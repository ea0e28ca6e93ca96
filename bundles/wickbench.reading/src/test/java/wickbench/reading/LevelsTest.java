package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.method.Format;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Quantity;
import wickbench.api.method.Route;
import wickbench.api.method.Unit;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.words.Coded;

/** Dilutions by hand: mL over g, total over sample, area. Common practice, no source. */
class LevelsTest {
    /** A row of worked-levels.csv; the sample is diluted and the area swabbed only where stated. */
    record Row(
            Route route,
            Holds holds,
            Quantity limit,
            Quantity taken,
            Optional<Quantity> liquid,
            Optional<BigDecimal> area,
            BigDecimal dilution,
            Quantity high,
            String why) {
        Given given() {
            return new Given(Format.SANDWICH_HOOK).with(g -> {
                g.route = route;
                g.holds = holds;
                g.limit = limit;
                g.taken = taken;
                g.liquid = liquid;
                g.area = area;
                g.dilution = dilution;
            });
        }
    }

    static List<Row> rows() {
        return Golden.rows("worked-levels.csv").stream().map(LevelsTest::row).toList();
    }

    private static Row row(List<String> cells) {
        return new Row(
                Coded.of(Route.class, cells.get(0)),
                Coded.of(Holds.class, cells.get(1)),
                quantity(cells.get(2)).orElseThrow(),
                quantity(cells.get(3)).orElseThrow(),
                quantity(cells.get(4)),
                quantity(cells.get(5)).map(Quantity::value),
                new BigDecimal(cells.get(6)),
                quantity(cells.get(7)).orElseThrow(),
                cells.get(8));
    }

    private static Optional<Quantity> quantity(String text) {
        String[] parts = text.split(" ", 2);
        return text.isEmpty() ? Optional.empty() : Optional.of(Quantity.of(parts[0], Unit.ofSymbol(parts[1])));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void boundANegativeByTheLimitInTheSample(Row row) {
        assertThat(row.given().judge().level())
                .contains(new Level(
                        Optional.empty(),
                        Optional.of(row.high().value()),
                        row.high().unit(),
                        Basis.TOTAL_PROTEIN,
                        Optional.of(new BigDecimal("0.95"))));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void scaleWhatAPositiveStartsFromAsTheLimit(Row row) {
        Given given = row.given().with(g -> g.positiveFrom = Optional.of(g.limit.value()));
        given.strip = Given.positive(given.format);
        assertThat(given.judge().level())
                .contains(new Level(
                        Optional.of(row.high().value()),
                        Optional.empty(),
                        row.high().unit(),
                        Basis.TOTAL_PROTEIN,
                        Optional.empty()));
    }

    @Test
    void leaveAPositiveOpenWhereTheMethodStatesNoStart() {
        Given given = new Given(Format.SANDWICH_HOOK);
        assertThat(low(given, Outcome.POSITIVE)).isEmpty();
        assertThat(low(given, Outcome.POSITIVE_ABOVE_RANGE)).isEmpty();
        given.positiveFrom = Optional.of(new BigDecimal(2));
        assertThat(low(given, Outcome.POSITIVE_ABOVE_RANGE)).contains(new BigDecimal(20));
        given.hookOnset = Optional.of(new BigDecimal(400));
        assertThat(low(given, Outcome.POSITIVE)).contains(new BigDecimal(20));
        assertThat(low(given, Outcome.POSITIVE_ABOVE_RANGE)).contains(new BigDecimal(4000));
    }

    private static Optional<BigDecimal> low(Given given, Outcome outcome) {
        Level level = Levels.of(given.method(), given.sample(), outcome).orElseThrow();
        assertThat(level.high()).isEmpty();
        return level.low();
    }

    @Test
    void sayNothingOfAnInvalid() {
        Given given = new Given(Format.SANDWICH).with(g -> g.read = Optional.empty());
        assertThat(given.judge().level()).isEmpty();
    }

    @Test
    void stateNoProbabilityTheMethodDoesNotState() {
        Given given = new Given(Format.SANDWICH).with(g -> g.probability = Optional.empty());
        assertThat(given.judge().level().orElseThrow().probability()).isEmpty();
    }

    @Test
    void areRefusedWithoutTheLiquidThatTheLimitSpeaksOf() {
        for (Route route : List.of(Route.FOOD_SOLID, Route.SWAB_WET)) {
            Given given = new Given(Format.SANDWICH).with(g -> g.route = route);
            given.liquid = Optional.empty();
            assertThatThrownBy(given::judge)
                    .hasMessage("method hazelnut-food v3 has a limit in-extract and no volume of liquid");
        }
    }
}

package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickbench.api.method.Format;
import wickbench.api.reading.Level;
import wickbench.api.words.Coded;
import wickbench.reading.Bracket.Dilution;

class BracketTest {
    /**
     * Strips in one line: how many times diluted, then {@code -} negative, {@code +} positive, {@code h} hook lost, {@code s}
     * Invalid with a sign, {@code 0} Invalid without. The limit is 1 mg/L, a positive starts at 2, the hook at 400, and 2 g were
     * shaken in 20 mL (×10), so undiluted 10, 20 and 4000 mg/kg.
     *
     * <p>Common practice, no source: Negative undiluted and Positive diluted is a hook effect on a two-line strip.
     */
    @ParameterizedTest
    @CsvSource({
        "sandwich,      1-,            negative,             '',                  ..10",
        "sandwich,      1+,            positive,             '',                  20..",
        "sandwich,      1- 10+,        positive-above-range, '',                  200..",
        "sandwich,      1- 10+ 100-,   positive-above-range, '',                  200..1000",
        "sandwich,      1- 10- 100+,   positive-above-range, '',                  2000..",
        "sandwich,      1- 10- 100-,   negative,             '',                  ..10",
        "sandwich,      10-,           '',                   '',                  ..100",
        "sandwich,      10+ 100-,      positive,             '',                  200..1000",
        "sandwich,      0 10-,         '',                   '',                  ..100",
        "sandwich,      1s 10-,        '',                   sign,                ..100",
        "sandwich,      1- 10s,        '',                   sign,                ..10",
        "sandwich,      1s 1-,         negative,             '',                  ..10",
        "sandwich,      1s 10s 10-,    '',                   sign,                ..100",
        "sandwich,      1- 1s,         '',                   sign,                ..10",
        "sandwich,      1s 10+,        positive,             '',                  200..",
        "sandwich,      0,             '',                   '',                  none",
        "sandwich,      1s,            '',                   sign,                none",
        "sandwich,      1- 1+,         positive,             '',                  20..",
        "sandwich,      1+ 2-,         positive,             '',                  20..",
        "sandwich,      1+ 2.1-,       positive,             '',                  20..21",
        "sandwich-hook, 1- 10+,        positive,             interference,        200..",
        "sandwich-hook, 1h 10+ 1000-,  positive-above-range, '',                  4000..10000",
        "sandwich-hook, 1h 10h 100+,   positive-above-range, '',                  40000..",
        "sandwich-hook, 1h 10-,        positive-above-range, '',                  4000..",
        "sandwich-hook, 1+ 10-,        positive,             '',                  20..100",
        "competitive,   1- 10+,        positive,             interference,        200..",
        "competitive,   1- 10-,        negative,             '',                  ..10"
    })
    void joinsDilutions(String code, String strips, String outcome, String notes, String level) {
        Given given = new Given(Coded.of(Format.class, code));
        List<Dilution> dilutions = Arrays.stream(strips.split(" "))
                .map(strip -> dilution(given, strip))
                .toList();
        Bracket bracket = Bracket.of(given.method(), dilutions);
        assertThat(bracket.outcome().map(Coded::code).orElse("")).isEqualTo(outcome);
        assertThat((bracket.interference() ? "interference" : "") + (bracket.sign() ? "sign" : ""))
                .isEqualTo(notes);
        assertThat(bracket.level().map(BracketTest::text).orElse("none")).isEqualTo(level);
    }

    private static Dilution dilution(Given plain, String text) {
        Given given = new Given(plain.format);
        char lines = text.charAt(text.length() - 1);
        String times = text.length() == 1 ? "1" : text.substring(0, text.length() - 1);
        given.dilution = new BigDecimal(times);
        given.positiveFrom = Optional.of(new BigDecimal(2));
        given.hookOnset = Optional.of(new BigDecimal(400));
        switch (lines) {
            case '+' -> given.strip = Given.positive(given.format);
            case 'h' -> given.strip = Given.aboveRange();
            case 's' -> given.with(g -> g.read = Optional.empty()).strip = Given.positive(given.format);
            case '0' -> given.read = Optional.empty();
            default -> given.strip = Given.negative(given.format);
        }
        return new Dilution(given.sample(), given.judge());
    }

    private static String text(Level level) {
        return level.low().map(Decimals::text).orElse("") + ".."
                + level.high().map(Decimals::text).orElse("");
    }

    @Test
    void saysNothingOfNothing() {
        Bracket bracket = Bracket.of(new Given(Format.SANDWICH).method(), List.of());
        assertThat(bracket).isEqualTo(new Bracket(Optional.empty(), false, false, Optional.empty()));
    }

    @Test
    void keepsTheProbabilityOfTheStripThatBounds() {
        Given given = new Given(Format.SANDWICH);
        Bracket bracket = Bracket.of(given.method(), List.of(dilution(given, "1+"), dilution(given, "10-")));
        assertThat(bracket.level().flatMap(Level::probability)).contains(new BigDecimal("0.95"));
    }

    @Test
    void leavesThePositiveOpenThatANegativeOfTheSameDilutionContradicts() {
        Given given = new Given(Format.SANDWICH);
        Dilution negative = new Dilution(given.sample(), given.judge());
        given.strip = Given.positive(given.format);
        Dilution positive = new Dilution(given.sample(), given.judge());
        Level level =
                Bracket.of(given.method(), List.of(negative, positive)).level().orElseThrow();
        assertThat(text(level)).isEqualTo("..");
        assertThat(level.probability()).isEmpty();
    }
}

package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.gate.Answer;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method.PreCheck;
import wickbench.api.method.Method.Range;
import wickbench.api.method.Method.Timing;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Strip;
import wickbench.api.reading.Verdict;
import wickbench.reading.FindingsTable.Row;

class FindingsTest {
    static Stream<Row> rows() {
        return FindingsTable.ROWS.stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void areFoundOnEveryFormatAndDoWhatTheirSeveritySays(Row row) {
        for (Format format : Format.values()) {
            if (row.fits(format)) {
                check(row, new Given(format), Outcome.NEGATIVE);
                check(row, new Given(format).with(g -> g.strip = Given.positive(format)), Outcome.POSITIVE);
            }
        }
    }

    private static void check(Row row, Given given, Outcome before) {
        assertThat(given.judge().outcome()).isEqualTo(before);
        Verdict verdict = given.with(row.change()).judge();
        assertThat(verdict.findings())
                .extracting(Finding::rule, Finding::severity)
                .contains(tuple(row.rule(), row.severity()));
        Outcome after = switch (row.severity()) {
            case VOIDS -> Outcome.INVALID;
            case BARS_NEGATIVE -> before == Outcome.NEGATIVE ? Outcome.INVALID : before;
            case CAUTION -> before;
        };
        assertThat(verdict.outcome()).isEqualTo(after);
    }

    @ParameterizedTest
    @EnumSource
    void areNoneOnAGoodReading(Format format) {
        Given given = new Given(format).with(g -> g.strip = Given.positive(format));
        assertThat(given.judge().findings()).isEmpty();
    }

    /** Common practice, no source: warm-up 20 to 30 min, shake 60 s, extract used within 3 h; ends included. */
    @ParameterizedTest
    @CsvSource({
        "warm-up, 1200, 1800, ''",
        "warm-up, 1200, 1200, ''",
        "warm-up, 1200, 1199.999, time.warm-up-short: 19 min 59.999 s; at least 20 min",
        "warm-up, 1800, 1799, time.warm-up-short: 29 min 59 s; at least 30 min",
        "warm-up, 1800, 1800, ''",
        "warm-up, 1800, -60, time.warm-up-short: -60 s; at least 30 min",
        "shake, 60, 60, ''",
        "shake, 60, 59.999, time.shake-short: 59.999 s; at least 60 s",
        "shake, 60, 0, time.shake-short: 0 s; at least 60 s",
        "extract, 10800, 0, ''",
        "extract, 10800, 10800, ''",
        "extract, 10800, 10800.001, time.extract-old: 3 h 0.001 s; at most 3 h",
        "extract, 10800, -1, time.extract-old: -1 s; at most 3 h"
    })
    void holdTheirBounds(String what, long asked, BigDecimal stated, String finding) {
        Duration span = Duration.ofMillis(stated.movePointRight(3).longValueExact());
        Given given = new Given(Format.SANDWICH_HOOK);
        given.timing = new Timing(
                given.timing.develop(),
                given.timing.window(),
                Optional.of(Duration.ofSeconds(what.equals("warm-up") ? asked : 0)),
                Optional.of(Duration.ofSeconds(what.equals("shake") ? asked : 0)),
                Optional.of(Duration.ofSeconds(what.equals("extract") ? asked : 1000)));
        switch (what) {
            case "warm-up" -> given.outOfFridge = Optional.of(Given.START.minus(span));
            case "shake" -> given.shaken = Optional.of(span);
            default -> given.extracted = Optional.of(Given.START.minus(span));
        }
        assertThat(given.judge().findings().stream().map(FindingsTest::oneLine).toList())
                .isEqualTo(finding.isEmpty() ? List.of() : List.of(finding));
    }

    private static String oneLine(Finding finding) {
        return finding.rule() + ": " + finding.measured() + "; " + finding.asked();
    }

    @Test
    void areNotAskedForWhereTheMethodDoesNotAsk() {
        Given given = new Given(Format.COMPETITIVE).with(g -> {
            g.timing = new Timing(
                    g.timing.develop(), g.timing.window(), Optional.empty(), Optional.empty(), Optional.empty());
            g.outOfFridge = Optional.empty();
            g.extracted = Optional.empty();
            g.shaken = Optional.empty();
            g.measured = Map.of("colour", BigDecimal.ONE);
            g.answers = List.of(new Answer.Cleared("stock", Map.of("expiry", "2027-01-31")));
        });
        assertThat(given.judge().findings()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"5.999,false", "6,true", "6.0,true", "8,true", "8.001,false"})
    void includeBothEndsOfAPreCheck(BigDecimal measured, boolean stands) {
        Given given = new Given(Format.SANDWICH_HOOK).with(g -> {
            g.preChecks =
                    List.of(new PreCheck("temperature", new Range(new BigDecimal(6), new BigDecimal(8), Unit.CELSIUS)));
            g.measured = Map.of("temperature", measured);
        });
        Finding finding = new Finding(
                "sample.pre-check", Severity.BARS_NEGATIVE, "temperature " + measured + " °C", "temperature 6 to 8 °C");
        assertThat(given.judge().findings()).isEqualTo(stands ? List.of() : List.of(finding));
    }

    @Test
    void tellOfAFaintCompetitiveLineOnlyWhereTheMethodDoesNotCallIt() {
        Strip faint = Given.strip(Format.COMPETITIVE, Seen.FAINT);
        Verdict open = new Given(Format.COMPETITIVE).with(g -> g.strip = faint).judge();
        assertThat(open.outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(open.findings()).extracting(Finding::rule).containsExactly("lines.faint-competitive");
        assertThat(called(faint, Seen.SEEN).outcome()).isEqualTo(Outcome.NEGATIVE);
        assertThat(called(faint, Seen.NOT_SEEN).outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(called(faint, Seen.SEEN).findings()).isEmpty();
        Verdict bySecond = new Given(Format.COMPETITIVE)
                .with(g -> g.second = Optional.of(faint))
                .judge();
        assertThat(bySecond.outcome()).isEqualTo(Outcome.POSITIVE);
        assertThat(bySecond.findings()).extracting(Finding::rule).containsExactly("lines.faint-competitive");
    }

    private static Verdict called(Strip strip, Seen faintTest) {
        return new Given(Format.COMPETITIVE)
                .with(g -> g.strip = strip)
                .with(g -> g.faintTest = Optional.of(faintTest))
                .judge();
    }

    @Test
    void makeTheMoreCautiousReaderCount() {
        for (Format format : Format.values()) {
            Strip negative = Given.negative(format);
            Strip positive = Given.positive(format);
            String measured =
                    format.sandwich() ? "test not-seen, second reader seen" : "test seen, second reader not-seen";
            Finding differ = new Finding("reader.disagreement", Severity.CAUTION, measured, "both the same");
            assertThat(two(negative, positive).outcome()).isEqualTo(Outcome.POSITIVE);
            assertThat(two(positive, negative).outcome()).isEqualTo(Outcome.POSITIVE);
            assertThat(two(negative, positive).findings()).contains(differ);
            assertThat(two(negative, negative).outcome()).isEqualTo(Outcome.NEGATIVE);
            assertThat(two(positive, positive).findings()).isEmpty();
        }
    }

    @Test
    void letAVoidOfEitherReaderVoidAndKeepTheSign() {
        Strip positive = Given.positive(Format.SANDWICH_HOOK);
        Strip damaged = Given.with(positive, LineRole.TEST, Seen.DAMAGED);
        Verdict verdict = two(positive, damaged);
        assertThat(verdict.outcome()).isEqualTo(Outcome.INVALID);
        assertThat(verdict.sign()).isTrue();
        assertThat(verdict.findings()).extracting(Finding::rule).containsExactly("line.damaged", "reader.disagreement");
        assertThat(two(damaged, damaged).findings()).extracting(Finding::rule).containsExactly("line.damaged");
    }

    @Test
    void takeFaintAndSeenForTheSame() {
        Strip seen = Given.positive(Format.SANDWICH);
        assertThat(two(seen, Given.strip(Format.SANDWICH, Seen.FAINT)).findings())
                .isEmpty();
        assertThat(two(Given.aboveRange(), Given.negative(Format.SANDWICH_HOOK)).outcome())
                .isEqualTo(Outcome.POSITIVE_ABOVE_RANGE);
    }

    private static Verdict two(Strip first, Strip second) {
        return new Given(first.format())
                .with(g -> g.strip = first)
                .with(g -> g.second = Optional.of(second))
                .judge();
    }

    @Test
    void areNotGivenForAStripOfAnotherFormat() {
        Given given = new Given(Format.SANDWICH).with(g -> g.strip = Given.negative(Format.COMPETITIVE));
        assertThatThrownBy(given::judge)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("method hazelnut-food v3 is for sandwich strips, read was a competitive");
        Given second =
                new Given(Format.SANDWICH).with(g -> g.second = Optional.of(Given.negative(Format.SANDWICH_HOOK)));
        assertThatThrownBy(second::judge).isInstanceOf(IllegalArgumentException.class);
    }
}

package wickbench.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wickbench.api.method.Format;
import wickbench.api.method.LineRole;
import wickbench.api.method.Method.Basis;
import wickbench.api.method.Method.Holds;
import wickbench.api.method.Route;
import wickbench.api.method.Seen;
import wickbench.api.method.Unit;
import wickbench.api.reading.Finding;
import wickbench.api.reading.Level;
import wickbench.api.reading.Outcome;
import wickbench.api.reading.Owed;
import wickbench.api.reading.Reason;
import wickbench.api.reading.RunControl;
import wickbench.api.reading.Severity;
import wickbench.api.reading.Verdict;
import wickbench.api.reading.Visual;
import wickbench.api.words.Coded;
import wickbench.reading.FindingsTable.Row;

class WordsTest {
    /** What puts results in doubt, as the bundles of the house say it. */
    private static final List<String> CAUSES =
            List.of("lot.rejected", "lot.storage", "lot.shortened", "operator.suspended", "method.withdrawn");

    static Stream<Coded> choices() {
        return Stream.of(
                        Outcome.values(),
                        Severity.values(),
                        Owed.values(),
                        LineRole.values(),
                        Seen.values(),
                        Format.values(),
                        Route.values(),
                        Reason.values(),
                        Visual.values(),
                        RunControl.values(),
                        Basis.values(),
                        Holds.values())
                .flatMap(Arrays::stream);
    }

    static Stream<Finding> findings() {
        Stream<Finding> ofRows = FindingsTable.ROWS.stream().flatMap(WordsTest::findings);
        Stream<Finding> ofHook = OwedTest.ROWS.stream()
                .flatMap(row -> new Given(row.format()).with(row.change()).judge().findings().stream());
        Stream<Finding> ofReaders = Stream.of(
                new Finding("lines.faint-competitive", Severity.CAUTION, "test faint", "a call in the method"),
                new Finding("reader.disagreement", Severity.CAUTION, "test seen, second reader faint", "the same"));
        Stream<Finding> ofTheDoor = Stream.of(
                new Finding("method.not-in-force", Severity.CAUTION, "2026-03-01T08:00:00Z", "hazelnut-food v3"));
        return Stream.of(ofRows, ofHook, ofReaders, ofTheDoor).flatMap(stream -> stream);
    }

    private static Stream<Finding> findings(Row row) {
        return new Given(Format.SANDWICH_HOOK).with(row.change()).judge().findings().stream();
    }

    @ParameterizedTest
    @MethodSource("choices")
    void everyChoiceHasWords(Coded choice) {
        assertThat(ReadingWords.text(choice)).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("findings")
    void everyFindingIsOneSentenceWithWhatWasMeasuredAndAsked(Finding finding) {
        String text = FindingWords.text(finding);
        assertThat(text)
                .contains(finding.measured(), finding.asked())
                .endsWith(".")
                .doesNotContain("{", "''");
    }

    @Test
    void noWordsAreLeftOver() throws IOException {
        Properties words = new Properties();
        words.load(new StringReader(Golden.text("/OSGI-INF/l10n/reading.properties")));
        Set<String> unused = new HashSet<>(words.stringPropertyNames());
        choices().forEach(choice -> unused.removeIf(key -> key.endsWith("." + choice.code()) && !isFinding(key)));
        findings().forEach(finding -> unused.removeIf(key -> isFinding(key) && wordsOf(key, finding)));
        unused.removeIf(key -> key.startsWith("level.") || key.startsWith("sentence."));
        unused.remove("outcome.diluted");
        CAUSES.forEach(cause -> unused.remove("doubt." + cause));
        // what stands in for a measure or rule that the program does not yet know
        assertThat(unused).containsExactlyInAnyOrder("finding.line.damaged");
    }

    @Test
    void whyAResultIsInDoubtIsSaidInWordsAlsoOfACauseThatNobodyKnows() {
        assertThat(CAUSES)
                .allSatisfy(cause ->
                        assertThat(ReadingWords.doubt(cause)).startsWith("its ").doesNotContain(cause));
        assertThat(ReadingWords.doubt("water.bad")).isEqualTo("put in doubt (water.bad)");
    }

    private static boolean isFinding(String key) {
        return key.startsWith("finding.");
    }

    private static boolean wordsOf(String key, Finding finding) {
        return ReadingWords.words()
                .get(key, finding.measured(), finding.asked(), finding.rule())
                .equals(FindingWords.text(finding));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    time.read-late     | 361 s      | at most 360 s   | The strip was read too late: 361 s after the start; the method asks for at most 360 s.
                    time.shake-short   | not stated | at least 60 s   | How long the sample was shaken is not stated; the method asks for at least 60 s.
                    operator.lapsed    | 2026-01-31 | a later date    | The operator's authorisation had lapsed: 2026-01-31; asked: a later date.
                    plant-not-checked  | not checked | plant          | Something was not checked, because nobody was there to ask: plant.
                    plant.closed       | closed     | open            | A check by a neighbour says no (plant.closed): found closed, asked open.
                    """)
    void findingsReadPlainly(String rule, String measured, String asked, String text) {
        assertThat(FindingWords.text(new Finding(rule, Severity.CAUTION, measured, asked)))
                .isEqualTo(text);
    }

    @Test
    void outcomesSayNoMoreThanTheStrip() {
        Given given = new Given(Format.SANDWICH_HOOK);
        assertThat(sentence(given)).isEqualTo("Not detected by this method in this sample.");
        given.strip = Given.positive(given.format);
        assertThat(sentence(given)).isEqualTo("Detected.");
        given.read = Optional.empty();
        assertThat(sentence(given))
                .isEqualTo("The strip proves nothing, but it shows a sign of allergen: hold until repeated.");
        given.strip = Given.negative(given.format);
        assertThat(sentence(given)).isEqualTo("The strip proves nothing: repeat it.");
        assertThat(sentence(new Given(given.format).with(g -> g.strip = Given.aboveRange())))
                .isEqualTo("Detected, and more than the strip can show: dilute and repeat to bracket the amount.");
        assertThat(OutcomeWords.text(Outcome.POSITIVE_ABOVE_RANGE)).isEqualTo("Positive, above range");
    }

    private static String sentence(Given given) {
        return OutcomeWords.sentence(given.judge(), BigDecimal.ONE);
    }

    @Test
    void a_diluted_negative_is_never_told_as_the_samples() {
        Given given = new Given(Format.SANDWICH_HOOK);
        BigDecimal hundred = new BigDecimal("1E+2");

        assertThat(OutcomeWords.text(Outcome.NEGATIVE, BigDecimal.ONE)).isEqualTo("Negative");
        assertThat(OutcomeWords.text(Outcome.NEGATIVE, hundred)).isEqualTo("Negative at ×100");
        assertThat(OutcomeWords.sentence(given.judge(), hundred))
                .isEqualTo(
                        "Not detected at ×100. This bounds the amount from above; it is never the sample's Negative.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
                    -   | 10   | below 10 mg/kg (total protein)
                    20  | -    | from 20 mg/kg on (total protein)
                    200 | 1000 | from 200 to below 1000 mg/kg (total protein)
                    -   | -    | detected; the method does not state from what amount on (mg/kg, total protein)
                    """)
    void levelsAreIntervals(BigDecimal low, BigDecimal high, String text) {
        Level level = new Level(
                Optional.ofNullable(low),
                Optional.ofNullable(high),
                Unit.MG_PER_KG,
                Basis.TOTAL_PROTEIN,
                Optional.of(new BigDecimal("0.95")));
        assertThat(OutcomeWords.level(level)).isEqualTo(text);
        assertThat(OutcomeWords.probability(level)).contains("detected there with a probability of 95 %");
    }

    @Test
    void aReportGivesOpenEndsAsNull() {
        Given given = new Given(Format.SANDWICH);
        Verdict negative = given.judge();
        assertThat(VerdictJson.report("S-001", negative).canonical())
                .isEqualTo("{\"findings\":[{\"asked\":\"a hook line\",\"measured\":\"no hook line\","
                        + "\"rule\":\"format.no-hook-line\",\"severity\":\"caution\",\"text\":\""
                        + FindingWords.text(negative.findings().get(0))
                        + "\"}],\"level\":{\"basis\":\"total-protein\",\"high\":10,\"low\":null,"
                        + "\"probability\":0.95,\"unit\":\"mg/kg\"},\"method\":{\"id\":\"hazelnut-food\",\"version\":3},"
                        + "\"outcome\":\"negative\",\"owed\":[],\"sample\":\"S-001\",\"sign\":false}");
        given.strip = Given.positive(given.format);
        given.read = Optional.of(Given.START);
        assertThat(VerdictJson.report("S-002", given.judge()).canonical())
                .contains(
                        "\"level\":null", "\"outcome\":\"invalid\"", "\"sign\":true", "\"owed\":[\"repeat\",\"hold\"]");
        given.read = Optional.of(Given.START.plusSeconds(300));
        given.positiveFrom = Optional.of(BigDecimal.ONE);
        assertThat(VerdictJson.report("S-003", given.judge()).canonical())
                .contains("\"high\":null,\"low\":10,\"probability\":null");
    }

    @Test
    void spansAreWrittenAsPeopleSayThem() {
        List<String> texts = Stream.of(0L, 1L, 599_999L, 600_000L, 1_199_000L, 3_600_000L, 10_800_500L, 90_061_000L)
                .map(millis -> Spans.text(Duration.ofMillis(millis)))
                .toList();
        assertThat(texts)
                .containsExactly(
                        "0 s", "0.001 s", "599.999 s", "10 min", "19 min 59 s", "1 h", "3 h 0.5 s", "25 h 1 min 1 s");
    }

    @Test
    void whatIsOwedStandsMostUrgentFirstAndNothingIsLeftOut() {
        Verdict all = new Verdict(
                Outcome.POSITIVE_ABOVE_RANGE,
                false,
                List.of(),
                Optional.empty(),
                Set.of(Owed.values()),
                new Given(Format.SANDWICH).judge().method());
        assertThat(OutcomeWords.owed(all))
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(Owed.values()).map(ReadingWords::text).toList())
                .startsWith(ReadingWords.text(Owed.HOLD), ReadingWords.text(Owed.RE_CLEAN));
    }
}

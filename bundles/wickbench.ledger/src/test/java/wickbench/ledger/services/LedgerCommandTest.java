package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import wickbench.api.authority.Signature;
import wickbench.api.check.BadInput;
import wickbench.api.check.Refusal;
import wickbench.api.journal.Draft;
import wickbench.api.journal.Entry;
import wickbench.api.json.Json;
import wickbench.api.method.Seen;
import wickbench.api.reading.RecordedReading;
import wickbench.ledger.services.Strips.Plain;
import wickbench.testing.HeardTerminal;
import wickbench.testing.Meets;

class LedgerCommandTest {
    private static final String CAUTION =
            "A negative says only \"not detected by this method in this sample\", never \"free of\". The kit's insert, the"
                    + " site's food-safety plan, local law and licensed practice govern.";

    private TestSite site;
    private Entry negative;
    private Entry positive;
    private HeardTerminal printed;

    @BeforeEach
    void record() throws IOException {
        site = TestSite.made();
        site.shelf.issue(Strips.method("hazelnut-rinse"), TestSite.WRITER);
        negative = site.record(Plain.negative("S-1").at(now(2)).judged());
        positive = site.record(
                Plain.negative("S-2").seen(Seen.SEEN, Seen.FAINT).at(now(1)).judged());
    }

    /** After the method was issued, so that it was in force. */
    private Instant now(long hoursAgo) {
        return site.home.clock().instant().plus(Duration.ofHours(3 - hoursAgo));
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void listsNewestFirstWithTheUsualCaution() {
        assertThat(run("list")).isZero();
        assertThat(printed.printed().get(0))
                .isEqualTo(
                        "when | sample | place | line | batch | method | lot | operator | outcome | findings | entry");
        assertThat(printed.printed().get(1))
                .contains(
                        " | S-2 | filler nozzle | L1 |  | hazelnut-rinse v1 | A17 | op-03 | Positive | 0 | bench-1:3");
        assertThat(printed.printed().get(2)).contains(" | S-1 | ").contains(" | Negative | ");
        assertThat(printed.printed()).contains("2 of 2 shown").endsWith(CAUTION);
    }

    @Test
    void anEmptyAnswerIsSaidAndStillCautioned() {
        assertThat(run("list", "--batch", "B-404")).isZero();
        assertThat(printed.printed()).containsExactly("No result answers this.", "", CAUTION);
        assertThat(runJson("list", "--batch", "B-404")).isZero();
        assertThat(printed.printed()).containsExactly("[]");
    }

    @Test
    void machinesGetAnArray() {
        assertThat(runJson("list", "--outcome", "positive")).isZero();
        assertThat(printed.printed())
                .singleElement()
                .asString()
                .startsWith("[{")
                .contains("\"id\":\"" + positive.id() + "\"")
                .contains("\"entry\":\"bench-1:3\"")
                .contains("\"outcome\":\"positive\"")
                .contains("\"held\":true")
                .doesNotContain("S-1");
    }

    @Test
    void theLimitIsKeptAndWhatIsLeftOutIsSaid() {
        run("list", "--limit", "1");
        assertThat(printed.printed()).hasSize(5).contains("1 of 2 shown");
    }

    @Test
    @Meets({"21 CFR 117.305(f)", "EU GMP Annex 11 12.4", "ISO/IEC 17025 7.8.6"})
    void showsAResultInFull() {
        assertThat(run("show", positive.ref().toString())).isZero();
        assertThat(printed.printed())
                .contains(
                        "  Outcome: Positive – Detected.",
                        "  Held: line and product until an authorised person decides.",
                        "  C control line: seen",
                        "  H hook line: seen",
                        "  T test line: faint",
                        "  from start to reading: 5 min 30 s",
                        "  shaken: not stated",
                        "  origin: typed from a sheet, morning.csv, line 2",
                        "    leaf " + positive.leaf(),
                        "  nobody was asked",
                        CAUTION)
                .anyMatch(line -> line.startsWith("  bench-1:3  ")
                        && line.endsWith(" recorded by op-01: Positive  (the result stands by this)"));
        site.journal.checkpoint();
        run("show", positive.id().toString());
        assertThat(printed.printed())
                .anyMatch(line -> line.startsWith("    sealed by the checkpoint over 4 entries, root "));
    }

    @Test
    void numbersAndDaysAreTheSites() {
        run("show", negative.ref().toString());
        String by = site.site.now().reviewBy(negative.at()).toString();
        assertThat(printed.printed())
                // the method's limit is 0.3 µg/mL; the site prefers ng/mL
                .contains("  In numbers: below 300 ng/mL (total protein)", "  Review due by: " + by);
    }

    @Test
    @Meets({"21 CFR 11.10(e)", "EU GMP Annex 11 9"})
    void correctsThroughTheDoorAndKeepsWhatWasSaidBefore() {
        assertThat(run(
                        "correct",
                        negative.id().toString(),
                        "--reason",
                        "the faint line was overlooked",
                        "--seen",
                        "control hook ~test",
                        "--batch",
                        "B-7"))
                .isZero();
        assertThat(printed.printed())
                .contains("  Outcome: Positive – Detected.", "  T test line: faint", "  batch: B-7")
                .anyMatch(line -> line.endsWith(" recorded by op-01: Negative"))
                .containsOnlyOnce("    not signed")
                .anyMatch(line -> line.endsWith(
                        " corrected by op-01: Positive – the faint line was overlooked  (the result stands by this)"));
        run("list", "--held");
        assertThat(printed.printed()).anyMatch(line -> line.contains("Positive, corrected (not signed)"));
    }

    @Test
    @Meets("21 CFR 11.50")
    void whoSignedACorrectionWhenAndWhatForIsShownWhereverItIs() {
        Signature name = site.correctSigned(
                negative.id(), Plain.negative("S-1").seen(Seen.SEEN, Seen.FAINT).judged());
        run("show", negative.id().toString());
        assertThat(printed.printed())
                .containsOnlyOnce("    signed by op-01 at " + new SiteClock(TestSite.ZONE).second(name.at())
                        + " to correct their own reading");
        run("list");
        assertThat(printed.printed())
                .anyMatch(line -> line.contains("Positive, corrected"))
                .noneMatch(line -> line.contains("not signed"));
        String signed =
                "\"signed\":{\"at\":\"" + name.at() + "\",\"by\":\"op-01\",\"meaning\":\"correct-own-reading\"}";
        runJson("show", negative.id().toString());
        assertThat(printed.printed().get(0).split(java.util.regex.Pattern.quote(signed), -1))
                // of the result and of the statement
                .hasSize(3);
        runJson("list");
        assertThat(printed.printed().get(0)).contains("\"corrected\":true", signed);
    }

    @Test
    @Meets("ISO 22000 8.9.2, 8.9.4, 10.1")
    void aPositiveCannotBeArguedAway() {
        assertThat(run("correct", positive.ref().toString(), "--reason", "surely not", "--seen", "control hook"))
                .isEqualTo(3);
        assertThat(printed.notes()).singleElement().asString().contains("a correction cannot take that away");
        assertThat(site.results.find(positive.id()).orElseThrow().history()).hasSize(1);
    }

    @Test
    void withoutTheBenchNothingIsCorrected() {
        HeardTerminal lines = HeardTerminal.of(TestSite.WRITER, false);
        Doors doors = site.doors(Optional.empty());
        Object command = new LedgerCommands(
                        site.home,
                        site.results,
                        site.journal,
                        site.site,
                        doors.reviewing(),
                        new CorrectDesk(Optional.empty(), Optional.empty()),
                        doors.deciding(),
                        doors.releasing(),
                        doors.packing(),
                        doors.trending(),
                        List.of(),
                        List.of(),
                        Optional.empty())
                .commands(lines);
        assertThat(execute(command, lines, "correct", "bench-1:2", "--reason", "x", "--batch", "B-7"))
                .isEqualTo(3);
        assertThat(lines.notes())
                .containsExactly("The bench is not installed here, and readings are corrected through its door only."
                        + " Start the program with the feature 'bench'.");
    }

    @Test
    void entriesOfANewerProgramAreTold() {
        Json.Obj body = Json.object().with("something", "new");
        site.journal.append(
                List.of(new Draft(Draft.randomId(site.home.chance()), TestSite.WRITER, RecordedReading.KIND, 2, body)));
        run("list");
        assertThat(printed.notes())
                .containsExactly("1 entries of reading.recorded version 2 were written by a newer program and are in no"
                        + " result here.");
        assertThat(printed.printed()).contains("2 of 2 shown");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        list --outcome maybe | --outcome: expected one of negative, positive, positive-above-range, invalid, found 'maybe'
        list --from 2026-03-02 --to 2026-03-01 | --to: expected a day from 2026-03-02 on, found 2026-03-01
        list --limit 0 | --limit: expected a number from 1 on, found 0
        export --out results.doc | --out: expected a file that ends with .csv, .xlsx, .jsonl or .pdf, found results.doc
        show nonsense | ID: expected the id of an entry, or STATION:NUMBER, found 'nonsense'
        show bench-1:0 | ID: no result was recorded or corrected by the entry bench-1:0
        show 00000000-0000-0000-0000-000000000000 | ID: no result was recorded or corrected by the entry 00000000-0000-0000-0000-000000000000
        correct bench-1:2 --reason x | correct: expected at least one thing that was otherwise, such as --seen "control test"
        correct bench-1:2 --reason x --started noon | --started: expected an ISO 8601 time such as 2026-03-31T08:05:00+02:00, found 'noon'
        """)
    void badInputIsOneLine(String arguments, String line) {
        assertThat(run(arguments.split(" "))).isEqualTo(2);
        assertThat(printed.notes()).containsExactly(line);
    }

    private int run(String... arguments) {
        return run(false, arguments);
    }

    private int runJson(String... arguments) {
        return run(true, arguments);
    }

    private int run(boolean json, String... arguments) {
        printed = HeardTerminal.of(TestSite.WRITER, json);
        Object command = new LedgerCommand(
                site.results,
                site.doors(Optional.empty()),
                new ResultExport(site.results, List.of()),
                printed,
                new Print(printed, site.journal, site.site, new PersonNames(List.of())),
                new ActsPrint(printed, site.site, site.home.clock()));
        return execute(command, printed, arguments);
    }

    private static int execute(Object command, HeardTerminal lines, String... arguments) {
        return new CommandLine(command)
                .setExecutionExceptionHandler((e, called, result) -> {
                    lines.note(e.getMessage());
                    assertThat(e).isInstanceOfAny(BadInput.class, Refusal.class);
                    return e instanceof BadInput ? 2 : 3;
                })
                .execute(arguments);
    }
}

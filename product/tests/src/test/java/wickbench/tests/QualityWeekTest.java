package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.Recipe;

/**
 * A week of quality assurance on the demonstration: results are reviewed and one is corrected, the hold that hazelnut at a pump seal
 * left behind is closed and its batch goes, the month is printed, and a stranger verifies the audit pack.
 */
class QualityWeekTest {
    private static final String PLACE = "L2 pump seal";
    private static final Pattern ID = Pattern.compile("\"id\":\"([0-9a-f-]{36})\"");
    private static final Pattern BATCH = Pattern.compile("\"batch\":\"([^\"]+)\"");
    private static final int WANTING = 1;
    private static final int REFUSED = 3;

    @TempDir
    static Path shared;

    private static StartedProgram program;
    private static DemoHome found;

    @BeforeAll
    static void found() throws Exception {
        program = StartedProgram.of(List.of("complete"), shared);
        found = DemoHome.found(program, shared.resolve("home"));
    }

    @AfterAll
    static void end() throws IOException {
        program.close();
    }

    @Test
    void by_commands(@TempDir Path temporary) throws Exception {
        DemoHome home = found.copy(temporary.resolve("home"));
        assertThat(home.done("", DemoHome.REVIEWER, "ledger", "list", "--unreviewed", "--count"))
                .doesNotStartWith("0");
        home.done(
                DemoHome.REVIEWERS,
                DemoHome.REVIEWER,
                "ledger",
                "review",
                "--from",
                "2026-02-20",
                "--to",
                "2026-02-28",
                "--sign");
        assertThat(home.done("", DemoHome.REVIEWER, "--json", "ledger", "review"))
                .contains("\"waiting\":0");

        String negative = first(
                ID,
                home.done(
                        "",
                        DemoHome.REVIEWER,
                        "--json",
                        "ledger",
                        "list",
                        "--outcome",
                        "negative",
                        "--to",
                        "2026-02-27",
                        "--limit",
                        "1"));
        home.done(
                DemoHome.REVIEWERS,
                DemoHome.REVIEWER,
                "ledger",
                "correct",
                negative,
                "--batch",
                "B-4711",
                "--reason",
                "the label says so",
                "--sign");
        assertThat(home.done("", DemoHome.REVIEWER, "ledger", "show", negative))
                .contains("B-4711", "the label says so");
        // what was corrected is looked over anew
        assertThat(home.told("", DemoHome.REVIEWER, "--json", "ledger", "review")
                        .out())
                .contains("\"waiting\":1");

        String open = home.done(
                "", DemoHome.RELEASER, "--json", "ledger", "list", "--place", PLACE, "--held", "--limit", "1");
        String hold = first(ID, open);
        String batch = first(BATCH, open);
        assertThat(home.told("", DemoHome.RELEASER, "ledger", "batch", batch).code())
                .isEqualTo(WANTING);
        String[] release = {
            "ledger", "decide", hold, "release", "--reason", "cleaned, sampled anew: not detected", "--sign"
        };
        Answer causeless = home.told(DemoHome.RELEASERS, DemoHome.RELEASER, release);
        assertThat(causeless.code()).isEqualTo(REFUSED);
        assertThat(causeless.err()).contains("root cause");
        assertThat(home.told(DemoHome.REVIEWERS, DemoHome.REVIEWER, release).code())
                .isEqualTo(REFUSED);
        home.done(
                DemoHome.RELEASERS,
                DemoHome.RELEASER,
                "ledger",
                "decide",
                hold,
                "release",
                "--reason",
                "cleaned, sampled anew: not detected",
                "--cause",
                "the seal was worn",
                "--sign");
        home.done("", DemoHome.RELEASER, "ledger", "batch", batch);
        home.done(
                DemoHome.RELEASERS,
                DemoHome.RELEASER,
                "ledger",
                "release",
                "batch",
                batch,
                "--reason",
                "all points are Negative",
                "--sign");

        Path month = temporary.resolve("month.pdf");
        home.done("", DemoHome.RELEASER, "report", "month", "2026-02", "--out", month.toString());
        assertThat(Pdf.text(month)).contains("the seal was worn", "the label says so", "B-4711");
        Path pack = temporary.resolve("pack");
        home.done(
                "",
                DemoHome.RELEASER,
                "ledger",
                "pack",
                "--from",
                "2026-02-01",
                "--to",
                "2026-02-28",
                "--out",
                pack.toString());
        verifies(pack);
    }

    private static void verifies(Path pack) throws IOException, InterruptedException {
        Recipe.Said said = Recipe.run(pack, "An audit pack");
        assertThat(said.code()).as(said.text()).isZero();
        assertThat(said.text()).contains("Signature Verified Successfully", "attachments that are not in the pack: 0");
        assertThat(Files.readString(pack.resolve("entries/bench-1.jsonl")))
                .contains("the seal was worn", "the label says so", "release.recorded");
    }

    private static String first(Pattern what, String in) {
        Matcher found = what.matcher(in);
        assertThat(found.find()).as(in).isTrue();
        return found.group(1);
    }
}

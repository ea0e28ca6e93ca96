package wickbench.tests;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.testing.Hand;
import wickbench.testing.Recipe;

/**
 * A week of quality assurance on the demonstration, by mouse and keys in the window of the built product.
 *
 * <p>Results are reviewed and one is corrected, the hold that hazelnut at a pump seal left behind is closed and its batch goes, the
 * month is printed, and a stranger verifies the audit pack.
 */
class QualityWeekTest {
    private static final String PLACE = "L2 pump seal";
    private static final Pattern BATCH = Pattern.compile("\"batch\":\"([^\"]+)\"");
    private static final int WANTING = 1;

    @TempDir
    Path temporary;

    @Test
    void by_hand() throws Exception {
        try (StartedProgram program = StartedProgram.of(List.of("complete"), temporary)) {
            week(DemoHome.found(program, temporary.resolve("home")));
        }
    }

    private void week(DemoHome home) throws Exception {
        String batch = heldBatch(home);
        assertThat(home.told("", DemoHome.RELEASER, "ledger", "batch", batch).code())
                .isEqualTo(WANTING);
        AtTheWindow window = new AtTheWindow(home);
        window.sits(DemoHome.REVIEWER, QualityWeekTest::reviews);
        assertThat(home.told("", DemoHome.REVIEWER, "--json", "ledger", "review")
                        .out())
                .contains("\"waiting\":1");
        Path month = temporary.resolve("month.pdf");
        Path pack = temporary.resolve("pack");
        window.sits(DemoHome.RELEASER, hand -> {
            closes(hand);
            releases(hand, batch);
            prints(hand, month, pack);
        });
        home.done("", DemoHome.RELEASER, "ledger", "batch", batch);
        assertThat(Pdf.text(month)).contains("the seal was worn", "the label says so", "B-4711");
        verifies(pack);
    }

    private static void reviews(Hand hand) {
        hand.go("Ledger");
        hand.fill("From", "2026-02-20");
        hand.fill("To", "2026-02-28");
        hand.press("Unreviewed only");
        hand.allRows();
        hand.press("Review selected\u2026");
        hand.fill("Passphrase", DemoHome.REVIEWERS);
        hand.press("Sign the review");
        hand.sees("No result passes these filters.");

        hand.press("Clear");
        hand.fill("To", "2026-02-27");
        hand.row("Negative");
        hand.press("Correct\u2026");
        hand.sees("What was said before stays");
        hand.fill("Batch", "B-4711");
        hand.press("Sign\u2026");
        hand.fill("Why", "the label says so");
        hand.fill("Passphrase", DemoHome.REVIEWERS);
        hand.press("Sign the correction");
        hand.sees("Corrected: the label says so");
    }

    private static void closes(Hand hand) {
        hand.go("Release");
        hand.row(PLACE);
        hand.sees("Product in question");
        hand.press("Release\u2026");
        decides(hand, DemoHome.REVIEWERS);
        hand.sees("That is not the passphrase of '" + DemoHome.RELEASER + "'.");
        hand.fill("Passphrase", DemoHome.RELEASERS);
        hand.press("Sign the decision");
        hand.sees("root cause");
        hand.press("Cancel");
        hand.fill("Root cause", "the seal was worn");
        hand.press("Release\u2026");
        decides(hand, DemoHome.RELEASERS);
        hand.sees("Root cause: the seal was worn");
    }

    private static void decides(Hand hand, String passphrase) {
        hand.fill("Why", "cleaned, sampled anew: not detected");
        hand.fill("Passphrase", passphrase);
        hand.press("Sign the decision");
    }

    private static void releases(Hand hand, String batch) {
        hand.fill("Its name", batch);
        hand.enter();
        hand.sees("Batch " + batch + ": may it go?");
        hand.press("Release\u2026");
        hand.fill("Why", "all points are Negative");
        hand.fill("Passphrase", DemoHome.RELEASERS);
        hand.press("Sign the release");
        hand.sees("Released 20");
    }

    private static void prints(Hand hand, Path month, Path pack) {
        hand.go("Ledger");
        hand.press("Print\u2026");
        hand.sees("Print a report");
        hand.down();
        hand.down();
        hand.fill("Which", "2026-02");
        hand.means(month);
        hand.press("Print\u2026");
        hand.sees("Printed to " + month);
        hand.fill("From", "2026-02-01");
        hand.fill("To", "2026-02-28");
        hand.means(pack);
        hand.press("Audit pack\u2026");
        hand.sees(pack.toString());
    }

    private static String heldBatch(DemoHome home) throws ReflectiveOperationException {
        String held = home.done(
                "", DemoHome.RELEASER, "--json", "ledger", "list", "--place", PLACE, "--held", "--limit", "1");
        Matcher found = BATCH.matcher(held);
        assertThat(found.find()).as(held).isTrue();
        return found.group(1);
    }

    private static void verifies(Path pack) throws IOException, InterruptedException {
        Recipe.Said said = Recipe.run(pack, "An audit pack");
        assertThat(said.code()).as(said.text()).isZero();
        assertThat(said.text()).contains("Signature Verified Successfully", "attachments that are not in the pack: 0");
        assertThat(Files.readString(pack.resolve("entries/bench-1.jsonl")))
                .contains("the seal was worn", "the label says so", "release.recorded");
    }
}

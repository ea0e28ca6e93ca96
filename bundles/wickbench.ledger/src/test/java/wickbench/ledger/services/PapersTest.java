package wickbench.ledger.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickbench.api.check.BadInput;
import wickbench.api.journal.Entry;
import wickbench.api.method.Seen;
import wickbench.api.report.Report;
import wickbench.api.report.ReportSource.Of;
import wickbench.api.report.ReportSource.Wanted;
import wickbench.api.report.Section;
import wickbench.ledger.acts.Move;
import wickbench.ledger.services.Strips.Plain;
import wickbench.testing.Meets;

/** Reports over many results: of a day, a line, a month, a batch. */
class PapersTest {
    @TempDir
    Path folder;

    private Quality quality;
    private Entry positive;

    @BeforeEach
    void aBatch() throws IOException {
        quality = Quality.tested();
        positive = quality.positive("S-3", Quality.HOPPER, Strips.START.plusSeconds(7200));
    }

    @AfterEach
    void close() {
        quality.close();
    }

    private Report report(Of of, String name) {
        return quality.site.papers.report(new Wanted(of, name, Optional.empty(), Optional.empty()));
    }

    /** Returns all words of a report, as they would stand on paper. */
    private static String words(Report report) {
        return report.sections().stream().map(PapersTest::words).collect(Collectors.joining("\n"));
    }

    private static String words(Section section) {
        if (section instanceof Section.Table table) {
            StringBuilder text = new StringBuilder();
            table.rows().forEach(row -> text.append(row).append('\n'));
            return text.toString();
        }
        return section.toString();
    }

    @Test
    void a_month_a_day_and_a_line_tell_the_same_strips_by_their_own_bounds() {
        // 08:00 UTC on the 2nd of March is the evening of that day in Auckland
        String day = Strips.START.atZone(TestSite.ZONE).toLocalDate().toString();
        for (Report report :
                List.of(report(Of.DAY, day), report(Of.MONTH, day.substring(0, 7)), report(Of.LINE, Quality.LINE))) {
            assertThat(words(report)).contains("S-1", "S-2", "S-3", "C-1", "Fact[name=Strips, value=4]");
            assertThat(report.drawnFrom()).contains(positive.ref());
        }
        assertThat(words(report(Of.MONTH, "2025-01"))).contains("Fact[name=Strips, value=0]");
        assertThat(words(report(Of.LINE, "L2"))).contains("Fact[name=Strips, value=0]");
    }

    @Test
    void run_controls_are_counted_apart() {
        assertThat(words(report(Of.LINE, Quality.LINE)))
                .contains(
                        "Fact[name=Negative, value=2]",
                        "Fact[name=Positive, value=1]",
                        "Fact[name=Run controls, in none of the three, value=1]");
    }

    @Test
    void what_is_open_or_waits_for_a_review_is_told_first() {
        List<Section> sections = report(Of.LINE, Quality.LINE).sections();
        assertThat(sections.get(0)).asString().contains("ALARM", "word=Open", "1 of these results hold");
        assertThat(sections.get(1)).asString().contains("CAUTION", "word=Not reviewed", "4 results wait");
    }

    @Test
    @Meets({"ISO/IEC 17025 7.8.8", "ISO/IEC 17025 7.5.2"})
    void a_correction_shows_what_was_said_before_what_instead_why_and_who_signed() {
        UUID id = quality.negative("S-9", Quality.NOZZLE, Strips.START.plusSeconds(3000))
                .id();
        quality.site.correctSigned(
                id,
                Quality.judged(
                        "S-10",
                        Quality.NOZZLE,
                        Strips.START.plusSeconds(3000),
                        Seen.SEEN,
                        Seen.NOT_SEEN,
                        Optional.empty(),
                        wickbench.api.method.Route.RINSE));
        String text = words(report(Of.LINE, Quality.LINE));
        assertThat(text).contains("sample: S-9, sample: S-10, mistyped, by op-01 at ", "signed by op-01 at ");
    }

    @Test
    void a_correction_without_a_signature_says_so_and_one_that_takes_allergen_away_does_not_stand() {
        quality.site.correct(positive.id(), Plain.negative("S-3").judged());
        assertThat(words(report(Of.LINE, Quality.LINE)))
                .contains("mistyped\n(does not take the place of what showed allergen)", "not signed");
    }

    @Test
    @Meets("21 CFR 117.150(a)")
    void what_was_decided_because_of_a_positive_is_told_with_its_cause_and_its_product() {
        quality.cleared(positive.id(), Quality.HOPPER, Strips.START.plusSeconds(9000));
        quality.decide(positive.id(), Move.RELEASE, "worn seal", Quality.RELEASER);
        String text = words(report(Of.BATCH, Quality.BATCH));
        assertThat(text)
                .contains(
                        "Root cause: worn seal", "B-7 released", "Last good result of the point: ", "as the plan says");
    }

    @Test
    @Meets("ISO/IEC 17025 7.8.2")
    void a_batch_says_whether_it_may_go_and_each_reason_why_not() {
        Report stays = report(Of.BATCH, Quality.BATCH);
        assertThat(stays.sections().get(0)).asString().contains("word=May not go", "Held because of strip S-3");
        assertThat(words(stays)).contains("LACKS", "filler nozzle");
    }

    @Test
    void a_released_batch_says_so_and_one_to_be_called_back_too() throws IOException {
        try (Quality good = Quality.tested()) {
            good.release(Quality.RELEASER);
            Wanted batch = new Wanted(Of.BATCH, Quality.BATCH, Optional.empty(), Optional.empty());
            assertThat(good.site.papers.report(batch).sections().get(0))
                    .asString()
                    .contains("word=Released");
            good.positive("S-3", Quality.HOPPER, Strips.START.plusSeconds(7200));
            assertThat(good.site.papers.report(batch).sections().get(0))
                    .asString()
                    .contains("EXTREME", "word=Call back");
        }
    }

    @Test
    void a_name_that_is_no_day_or_month_is_told() {
        assertThatThrownBy(() -> report(Of.DAY, "5 March"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected a day such as 2026-03-05, found '5 March'");
        assertThatThrownBy(() -> report(Of.MONTH, "2026-13"))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected a month such as 2026-03, found '2026-13'");
    }

    @Test
    @Meets("EU GMP Annex 11 8.1")
    void on_paper_it_carries_the_checkpoint_and_the_cautions() throws IOException {
        Path file = folder.resolve("batch.pdf");
        quality.site.papers.print(report(Of.BATCH, Quality.BATCH), file);
        try (var pdf = Loader.loadPDF(file.toFile())) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("Test report of batch B-7", "never \"free of\"", "Drawn from station bench-1")
                    .contains(quality.site
                            .journal
                            .checkpoint()
                            .orElseThrow()
                            .root()
                            .hex());
        }
    }

    @Test
    void machines_get_the_tables() throws IOException {
        Path file = folder.resolve("month.jsonl");
        quality.site.papers.print(report(Of.LINE, Quality.LINE), file);
        assertThat(Files.readAllLines(file)).anyMatch(line -> line.contains("\"sample\":\"S-3\""));
    }
}
